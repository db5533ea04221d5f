import {
  budgetsOf,
  groupParts,
  InputError,
  noSeriesNamed,
  openModel,
  parseQuantity,
  valueOn,
  why,
  whyNames,
  worstResidual,
  type Difference,
  type Moment,
  type Run,
  type ScenarioReading,
} from '@leat/core';
import { cautions } from '@leat/view/text';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { openScenario } from '../shared/referenced-files.js';
import { byChange, type ByChange } from './by-change.js';
import { changesText, differenceText, type NamedMoment } from './text.js';
import { styleFor } from '../../terminal/style.js';
import type { Streams } from '../../terminal/streams.js';
import { InterruptedError } from '../../workers/interruptible.js';
import { endingOf } from '../shared/simulated.js';
import { simulated } from '../shared/simulated.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat why` was asked: two files at one day (absent: the last that both have), or one file and two days. */
export interface WhyCommandOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly of: string;
  readonly at?: string;
  readonly from?: string;
  readonly to?: string;
  readonly around: 'place' | 'system';
  readonly by: 'process' | 'change';
  /** Changes told apart. */
  readonly most: number;
  readonly workers?: number;
  readonly detail?: boolean;
  readonly json?: boolean;
}

/** A day such as `60d`, d; the name of its option stands in the fault. */
function dayOf(text: string, option: string): number {
  const answer = parseQuantity(text, 'time');
  if ('problem' in answer) throw new InputError([{ file: option, got: JSON.stringify(text), ...answer }]);
  return answer.value;
}

const lastOf = (run: Run): number => run.samples[run.samples.length - 1].time;

/** The days asked about; the second of one run is its end where it is not given. */
function daysOf(options: WhyCommandOptions): readonly [number | undefined, number | undefined] {
  if (options.from !== undefined)
    return [dayOf(options.from, '--from'), options.to === undefined ? undefined : dayOf(options.to, '--to')];
  const at = options.at === undefined ? undefined : dayOf(options.at, '--at');
  return [at, at];
}

const named = (file: string, { run, day }: Moment): NamedMoment => ({
  file,
  title: run.model.scenario.title,
  startDate: run.model.scenario.startDate,
  day,
});

/** Throws InputError where a system will have no such quantity: before it is run. */
function checkNamed(name: string, reading: ScenarioReading): void {
  const known = whyNames(openModel(reading, { closureDraws: 0 }).model);
  if (!known.includes(name)) throw new InputError([{ file: '--of', ...noSeriesNamed(name, known) }]);
}

/**
 * `leat why FILE [OTHER] --of QUANTITY`: simulates and says which processes, flows and actions made a quantity differ.
 * A run that broke off before the day asked about gives no answer, only its code.
 */
export async function whyCommand(
  files: readonly string[],
  options: WhyCommandOptions,
  streams: Streams,
): Promise<ExitCode> {
  const days = daysOf(options);
  const readings = files.map((file) => openScenario(file, options));
  const display = displayInUnits(options, ...readings.map((reading) => reading.display));
  for (const reading of readings) checkNamed(options.of, reading);
  const runs: Run[] = [];
  for (const reading of readings) runs.push((await simulated(reading, {}, streams)).run);
  const end = Math.min(...runs.map(lastOf));
  const from: Moment = { run: runs[0], day: days[0] ?? end };
  const to: Moment = { run: runs[runs.length - 1], day: days[1] ?? end };
  const endings = runs.map((run) => endingOf(run, worstResidual(budgetsOf(run)).budget));
  endings.forEach(({ text }, i) => {
    if (text !== '') streams.note(linesText([`${files[i]}: ${text}`]));
  });
  const code = endings.reduce<ExitCode>(
    (worst, ending) => (ending.code > worst ? ending.code : worst),
    exit.done,
  );
  const missed = [from, to].some(({ run, day }) => run.outcome.kind !== 'done' && day > lastOf(run));
  if (missed) return code;
  const moments = [named(files[0], from), named(files[files.length - 1], to)] as const;
  let changed: ByChange | undefined;
  try {
    if (options.by === 'change')
      changed = await byChange([files[0], files[1]], { ...options, day: to.day }, options);
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a split that is not whole\n');
    return error.code;
  }
  const difference = processes(options, from, to, changed !== undefined);
  const told = { from: valueOn(options.of, from), to: valueOn(options.of, to) };
  if (options.json === true)
    streams.result(savedDocument('leat-difference', documentOf(told, moments, difference, changed, options)));
  else {
    const style = styleFor(process.stdout.isTTY, process.env);
    const oneRun = files.length === 1;
    const words = [
      ...(changed === undefined ? [] : [changesText(options.of, told, changed, moments, { display, style })]),
      ...(difference === undefined
        ? []
        : [
            differenceText(
              difference,
              moments,
              { oneRun, detail: options.detail === true, head: changed === undefined },
              { display, style },
            ),
          ]),
    ];
    streams.result(words.join('\n'));
  }
  return code;
}

/** The split by processes; undefined where the changes answer and the quantity is no sum of what processes did. */
function processes(
  { of, around }: WhyCommandOptions,
  from: Moment,
  to: Moment,
  answered: boolean,
): Difference | undefined {
  try {
    return why(of, from, to, { around });
  } catch (error) {
    if (answered && error instanceof InputError) return undefined;
    throw error;
  }
}

type Told = Readonly<Record<'from' | 'to', { readonly value: number; readonly unit: string }>>;

const momentOf = ({ file, title, day }: NamedMoment, value: number): object => ({ file, title, day, value });

/** The answer as plain data. */
function documentOf(
  told: Told,
  [first, second]: readonly [NamedMoment, NamedMoment],
  difference: Difference | undefined,
  changed: ByChange | undefined,
  { of, around }: WhyCommandOptions,
): object {
  return {
    quantity: of,
    unit: told.to.unit,
    difference: told.to.value - told.from.value,
    ...(difference && {
      groups: groupParts(difference.parts),
      parts: difference.parts,
      residual: difference.residual,
    }),
    ...(changed && {
      changes: changed.parts.map(({ change, value, alone }) => ({ name: change.name, value, alone })),
      runs: changed.runs,
      grouped: changed.grouped,
    }),
    around,
    from: momentOf(first, told.from.value),
    to: momentOf(second, told.to.value),
    cautions,
  };
}
