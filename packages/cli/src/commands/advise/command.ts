import {
  adviceOutcome,
  aimOf,
  conditionOf,
  dayOn,
  openModel,
  situationsOf,
  type ChangeName,
} from '@leat/core';
import {
  type AdviceRunner,
  changesThere,
  type FoundAdvice,
  openTexts,
  readAll,
  type ReferencedFiles,
  searchAdvice,
} from '@leat/core/tasks';
import { openOutputs } from '../../files/outputs.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { linesText } from '../../terminal/columns.js';
import { openRunsProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';
import { styleFor } from '../../terminal/style.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { runJobs } from '../../workers/pool.js';
import { changedText, includeName } from '../shared/changed-file.js';
import { readTexts, type ScenarioOptions } from '../shared/referenced-files.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { simulated } from '../shared/simulated.js';
import { adviceDocument, adviceText, type Advice } from './text.js';
import { job } from './job.js';

/** What `leat advise` was asked. */
export interface AdviseOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly from?: string;
  readonly change: readonly ChangeName[];
  readonly keep: readonly string[];
  readonly save?: string;
  /** Which proposal is saved, from 1. */
  readonly take: number;
  readonly workers?: number;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** What the bar of progress counts. */
const counted = { alone: 'changes tried', paired: 'pairs tried' };

/** How a search is run: on the workers, with progress. */
const runnerWith = (workers: number | undefined): AdviceRunner => ({
  changes: changesThere,
  async tried(shared, inputs, what) {
    const progress = await openRunsProgress(counted[what], inputs.length, 0);
    let count = 0;
    try {
      return await interruptible((signal) =>
        runJobs(job, shared, inputs, {
          signal,
          ...(workers !== undefined && { workers }),
          onDone: () => {
            progress.day(++count);
          },
        }),
      );
    } finally {
      progress.end();
    }
  },
});

/** The scenario and its run as it is; throws where a condition cannot be read. */
async function opened(texts: ReferencedFiles, options: AdviseOptions, streams: Streams) {
  const { reading } = openTexts(texts);
  const display = displayInUnits(options, reading.display);
  const { run } = await simulated(reading, {}, streams);
  const { model } = openModel(reading, { closureDraws: 0 });
  const conditions = readAll(options.keep, (text) => conditionOf(text, model, '--keep'));
  return { run, before: adviceOutcome(run, conditions), display };
}

/**
 * `leat advise FILE`: the smallest changes, alone and in pairs, with which a run that goes wrong goes well, and the
 * lines to put into the file. A run that goes well is told that nothing need be done.
 */
export async function adviseCommand(
  file: string,
  options: AdviseOptions,
  streams: Streams,
): Promise<ExitCode> {
  const texts = readTexts(file, options);
  if (options.save !== undefined) includeName(file, options.save);
  const { save } = openOutputs<'save'>(
    { ...(options.save !== undefined && { save: options.save }) },
    { save: 'own' },
    options,
  );
  const { run, before, display } = await opened(texts, options, streams);
  const { title, startDate } = run.model.scenario;
  const from = options.from === undefined ? undefined : dayOn(options.from, run.model.scenario, '--from');
  const situations = situationsOf(run, before.verdict, from);
  const aim = aimOf(before.harm);
  const shared = { texts, before: before.harm, aim, keep: options.keep, only: options.change };
  try {
    const found: FoundAdvice =
      aim === 'nothing'
        ? { proposals: [], runs: 0, situation: situations[0], vain: [] }
        : await searchAdvice(shared, situations, runnerWith(options.workers));
    const advice: Advice = {
      ...{ title, startDate, aim, before, keep: options.keep, asked: options.change },
      ...found,
    };
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(options.json === true ? adviceDocument(advice) : adviceText(advice, display, style));
    if (save === undefined) return exit.done;
    const chosen = found.proposals.at(options.take - 1);
    if (chosen === undefined) {
      const why = aim === 'nothing' ? 'nothing need be done' : `there is no proposal ${options.take}`;
      streams.note(linesText([`${save.path}: not written: ${why}`]));
      return aim === 'nothing' ? exit.done : exit.badInput;
    }
    save.write(
      changedText(texts, { ...chosen.file, title: `${title}, as advised` }, save.path, [
        'Made by leat advise: a proposal laid over the file below. Change it as you like.',
      ]),
    );
    streams.note(linesText([`${save.path}: proposal ${options.take}, to be run by leat run ${save.path}`]));
    return exit.done;
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a search that is not whole\n');
    return error.code;
  }
}
