import {
  InputError,
  measureOf,
  offBy,
  openModel,
  ownValues,
  type OwnValue,
  type StatedError,
} from '@leat/core';
import { askedTold, cautions, type Display, percent, shown, valueText } from '@leat/view/text';
import { savedDocument } from '../../files/saved-document.js';
import { cautionLines } from '../shared/caution-lines.js';
import { screenWidth } from '../../terminal/width.js';
import { columns, linesText, wrap } from '../../terminal/columns.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openRunsProgress } from '../../terminal/progress.js';
import { styleFor, type Style } from '../../terminal/style.js';
import type { Streams } from '../../terminal/streams.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { runJobs } from '../../workers/pool.js';
import { openTexts } from '@leat/core/tasks';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { readTexts, type ScenarioOptions } from '../shared/referenced-files.js';
import { job } from './own-job.js';

/** What is asked of a user's own numbers. */
export interface OwnOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly of: string;
  /** Each `path=10 %`. */
  readonly error: readonly string[];
  readonly workers?: number;
  readonly json?: boolean;
}

/** What one of the user's own numbers does to an outcome. */
interface OwnEffect extends OwnValue {
  /** The outcome where the number is its error too low and too high; NaN: no outcome. */
  readonly low: number;
  readonly high: number;
  /** Half of the farthest that it moves the outcome. */
  readonly moves: number;
}

/** What an outcome owes to the user's own numbers. */
interface OwnResult {
  readonly title: string;
  readonly measure: string;
  readonly unit: string;
  readonly outcome: number;
  readonly runs: number;
  readonly failed: number;
  /** Why the first of those failed. */
  readonly reason?: string;
  /** The strongest first. */
  readonly effects: readonly OwnEffect[];
}

function statedErrors(texts: readonly string[]): readonly StatedError[] {
  return texts.map((text) => {
    const match = /^([^=]+)=\s*(\d+\.?\d*|\.\d+)\s*%$/.exec(text.trim());
    const error = match === null ? Number.NaN : Number(match[2]) / 100;
    if (match === null || !(error > 0 && error < 1))
      throw new InputError([
        {
          file: '--error',
          got: JSON.stringify(text),
          problem: 'not an error of a number',
          expected: 'a path and a percentage below 100, such as "fish.*.ration=5 %"',
        },
      ]);
    return { pattern: match[1].trim(), error };
  });
}

async function look(
  file: string,
  options: OwnOptions,
  streams: Streams,
): Promise<{ readonly result: OwnResult; readonly display: Display }> {
  const texts = readTexts(file, options);
  const { reading } = openTexts(texts);
  const display = displayInUnits(options, reading.display);
  const { model, notes } = openModel(reading);
  streams.note(linesText(notes));
  const measure = measureOf(options.of, model, '--of');
  const values = ownValues(reading.resolved.written, model.parameters, statedErrors(options.error));
  const settings = values.flatMap((value) =>
    [-1, 1].map((sign) => `${value.path}=${offBy(value, sign * value.error)}`),
  );
  const progress = await openRunsProgress('runs', settings.length + 1, 0);
  let done = 0;
  try {
    const answers = await interruptible((signal) =>
      runJobs(job, { texts, measure: options.of }, ['', ...settings], {
        signal,
        ...(options.workers === undefined ? {} : { workers: options.workers }),
        onDone: () => {
          progress.day(++done);
        },
      }),
    );
    const [{ value: outcome }, ...others] = answers;
    const failing = answers.find(({ reason }) => reason !== undefined)?.reason;
    const effects = values.map((value, i): OwnEffect => {
      const [low, high] = [others[2 * i].value, others[2 * i + 1].value];
      const ends = [low, high].filter((each) => !Number.isNaN(each)).map((each) => Math.abs(each - outcome));
      return { ...value, low, high, moves: Math.max(0, ...ends) };
    });
    const result = {
      title: reading.scenario.title,
      ...{ measure: measure.text, unit: measure.unit, outcome, runs: answers.length },
      failed: answers.filter(({ reason }) => reason !== undefined).length,
      ...(failing !== undefined && { reason: failing }),
      effects: effects.sort((a, b) => b.moves - a.moves),
    };
    return { result, display };
  } finally {
    progress.end();
  }
}

/** Most numbers listed. */
const most = 10;

/** Which of the user's own numbers to measure better, and with what. */
function ownText(
  { title, measure, unit, outcome, runs, failed, reason, effects }: OwnResult,
  display: Display,
  style: Style,
): string {
  const told = askedTold({ text: measure, unit }, display);
  const unitText = told.unit === '' ? '' : ` ${told.unit}`;
  const value = (of: number): string => shown(told.value(of));
  const moving = effects.filter(({ moves }) => moves > 1e-9 * Math.abs(outcome));
  const together = Math.sqrt(effects.reduce((sum, { moves }) => sum + moves * moves, 0));
  const [first] = moving as readonly (OwnEffect | undefined)[];
  const answer =
    first === undefined
      ? `${measure} is ${value(outcome)}${unitText} whatever your own numbers are within their errors: none of ${effects.length} moves it`
      : `${measure} is ${value(outcome)}${unitText}, give or take ${shown(told.difference(together))} by what you may have measured wrong. ` +
        `Measure first: ${first.path} (${first.measure})`;
  const rows = moving
    .slice(0, most)
    .map((effect) => [
      effect.path,
      `${valueText(effect, effect.value)} ± ${percent(effect.error).replace('.0 %', ' %')}${effect.stated ? ' as stated' : ''}`,
      `${value(effect.low)} .. ${value(effect.high)}`,
      percent(effect.moves ** 2 / together ** 2),
    ]);
  const still = effects.length - moving.length;
  const lines = [
    ...wrap(answer, screenWidth(), '  ').map((line) => style.strong(line)),
    title,
    ...(failed === 0
      ? []
      : wrap(
          `${failed} of ${runs} runs make no system or have no outcome, so the other side counts; the first: ${(reason ?? '').split('\n')[0]}`,
          screenWidth(),
          '  ',
        ).map((line) => style.warn(line))),
    ...(rows.length === 0
      ? []
      : [
          '',
          ...columns(
            [['your number', 'and its error', `too low .. too high${unitText}`, 'of the doubt'], ...rows],
            ['left', 'left', 'left', 'right'],
          ),
        ]),
    ...(moving.length > most ? [`${moving.length - most} more, weaker: see --json`] : []),
    ...moving
      .slice(0, 3)
      .flatMap(({ path, measure: by }, i) =>
        wrap(`${i === 0 ? 'measure first' : 'then'}: ${path}: ${by}`, screenWidth(), '  '),
      ),
    ...(still > 0 && moving.length > 0 ? [`${still} others do not move it`] : []),
    '',
    ...wrap(
      'Errors are usual ones by common practice, the estimate of the authors, unless you state them (--error "fish.*.ration=5 %"). One number is moved at a time; their doubts are taken as independent.',
      screenWidth(),
    ),
    ...cautionLines(style),
  ];
  return linesText(lines);
}

/** `leat sensitivity FILE --of MEASURE --over mine`: which of the user's own numbers to measure better, and with what. */
export async function ownSensitivity(file: string, options: OwnOptions, streams: Streams): Promise<ExitCode> {
  try {
    const { result, display } = await look(file, options, streams);
    if (options.json === true)
      streams.result(savedDocument('leat-sensitivity', { over: 'mine', ...result, cautions }));
    else streams.result(ownText(result, display, styleFor(process.stdout.isTTY, process.env)));
    return result.failed < result.runs ? exit.done : exit.notFinished;
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a sensitivity that is not whole\n');
    return error.code;
  }
}
