import { budgetsOf, InputError, parseQuantity, why, worstResidual, type Moment, type Run } from '@leat/core';
import { cautions } from '@leat/view/text';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openScenario } from '../shared/referenced-files.js';
import { differenceText, type NamedMoment } from './text.js';
import { styleFor } from '../../terminal/style.js';
import type { Streams } from '../../terminal/streams.js';
import { endingOf } from '../shared/simulated.js';
import { simulated } from '../shared/simulated.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat why` was asked: two files at one day (absent: the last that both have), or one file and two days. */
export interface WhyCommandOptions extends ScenarioOptions {
  readonly of: string;
  readonly at?: string;
  readonly from?: string;
  readonly to?: string;
  readonly around: 'place' | 'system';
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
  day,
});

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
  const difference = why(options.of, from, to, { around: options.around });
  const moments = [named(files[0], from), named(files[files.length - 1], to)] as const;
  if (options.json === true) {
    const { quantity, unit, parts, residual } = difference;
    const [first, second] = moments;
    const document = {
      quantity,
      unit,
      difference: difference.difference,
      parts,
      residual,
      around: options.around,
      from: { ...first, value: difference.from },
      to: { ...second, value: difference.to },
      cautions,
    };
    streams.result(savedDocument('leat-difference', document));
  } else {
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(differenceText(difference, moments, files.length === 1, style));
  }
  return code;
}
