import { conditionOf, openModel, planAim, searchPlan, type PlanFound } from '@leat/core';
import {
  type OpenPlan,
  openPlan,
  openTexts,
  type PlanInput,
  planOf,
  type PlanOutput,
  type PlanShared,
  readAll,
} from '@leat/core/tasks';
import { openOutputs } from '../../files/outputs.js';
import { linesText } from '../../terminal/columns.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openRunsProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';
import { styleFor } from '../../terminal/style.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { runJobs } from '../../workers/pool.js';
import { changedText, includeName } from '../shared/changed-file.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { readTexts, type ScenarioOptions } from '../shared/referenced-files.js';
import { job } from './job.js';
import { planDocument, planText } from './text.js';

/** What `leat plan` was asked. */
export interface PlanOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly vary: readonly string[];
  readonly aim: string;
  readonly keep: readonly string[];
  readonly ration?: string;
  readonly members: number;
  readonly seed: number;
  readonly save?: string;
  readonly workers?: number;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** The best choice, by the workers. */
async function search(
  shared: PlanShared,
  { quantities }: OpenPlan,
  workers: number | undefined,
): Promise<PlanFound<PlanOutput>> {
  const points = searchPlan<PlanOutput>(quantities);
  let step = points.next();
  while (step.done !== true) {
    const inputs = step.value.map((at) => ({ at }));
    step = points.next(await jobs(shared, inputs, 'choices', workers));
  }
  return step.value;
}

/** Does the jobs, with progress. */
async function jobs(
  shared: PlanShared,
  inputs: readonly PlanInput[],
  what: string,
  workers: number | undefined,
): Promise<readonly PlanOutput[]> {
  const progress = await openRunsProgress(what, inputs.length, 0);
  let done = 0;
  try {
    return await interruptible((signal) =>
      runJobs(job, shared, inputs, {
        signal,
        ...(workers !== undefined && { workers }),
        onDone: () => {
          progress.day(++done);
        },
      }),
    );
  } finally {
    progress.end();
  }
}

function shareOf(file: string, options: PlanOptions): PlanShared {
  const { vary, aim, keep, ration, members, seed } = options;
  return {
    texts: readTexts(file, options),
    ...{ vary, aim, keep, members, seed },
    ...(ration !== undefined && { ration }),
  };
}

/**
 * `leat plan FILE`: how much of several things there may be at once for most (or least) of an aim, with the fish safe and
 * the water within its ration; and what is then to be sown, fed and dosed week by week.
 */
export async function planCommand(file: string, options: PlanOptions, streams: Streams): Promise<ExitCode> {
  const shared = shareOf(file, options);
  if (options.save !== undefined) includeName(file, options.save);
  const named = options.save === undefined ? {} : { save: options.save };
  const { save } = openOutputs<'save'>(named, { save: 'own' }, options);
  const { reading } = openTexts(shared.texts);
  const display = displayInUnits(options, reading.display);
  const { model } = openModel(reading, { closureDraws: 0 });
  planAim(options.aim, model);
  readAll(options.keep, (text) => conditionOf(text, model, '--keep'));
  const plan = openPlan(shared);
  // What the ration says is read as the file is.
  openTexts(plan.textsOf(plan.quantities.map(({ steps }) => steps)));
  streams.note(linesText(reading.notes));
  try {
    const sought = await search(shared, plan, options.workers);
    const { best } = sought;
    const draws = Array.from({ length: options.members }, (_, member) => ({ at: best.at, member }));
    const drawn = await jobs(shared, draws, 'draws', options.workers);
    const found = planOf(shared, sought, drawn);
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(options.json === true ? planDocument(found) : planText(found, display, style));
    if (!best.holds) {
      streams.note(
        linesText([
          `--vary: no choice between the ends keeps every condition; expected ends in which one does`,
        ]),
      );
      return exit.badInput;
    }
    const remark = ['Made by leat plan: a plan laid over the file below. Change it as you like.'];
    const after = { ...plan.fileOf(best.at), title: `${found.title}, as planned` };
    save?.write(changedText(shared.texts, after, save.path, remark));
    if (save !== undefined) streams.note(linesText([`${save.path}: to be run by leat run ${save.path}`]));
    return exit.done;
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a search that is not whole\n');
    return error.code;
  }
}
