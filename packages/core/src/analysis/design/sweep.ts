import type { Run } from '../../run/run.js';
import type { Condition } from '../measures/condition.js';
import type { Measure } from '../measures/measure.js';
import { NoAnswerError } from '../measures/phrase.js';
import { judgeRun } from './trial.js';

/** What the run at one point of a sweep came to. Plain data. */
export interface SweepPoint {
  /** One number for each measure; NaN where the run has no answer. */
  readonly measures: readonly number[];
  /** Margin of each condition; NaN where it has no answer. */
  readonly margins: readonly number[];
  /** Whether every condition holds; never where one has no answer. */
  readonly holds: boolean;
  /** Why a number is missing: the run broke off, or the values make no system. */
  readonly broke?: string;
}

/** Evaluates every measure and condition of a sweep on a run. */
export function sweepPoint(
  run: Run,
  measures: readonly Measure[],
  conditions: readonly Condition[],
): SweepPoint {
  let broke: string | undefined;
  const numbers = measures.map((measure) => {
    try {
      return measure.of(run);
    } catch (error) {
      if (!(error instanceof NoAnswerError)) throw error;
      broke ??= error.message;
      return Number.NaN;
    }
  });
  const trial = judgeRun(run, Number.NaN, conditions);
  broke ??= trial.broke;
  const { margins, holds } = trial;
  return { measures: numbers, margins, holds, ...(broke === undefined ? {} : { broke }) };
}

/**
 * So many values (`count`) at equal steps `from` one end `to` the other, both among them; whole numbers, each once, where only they make
 * sense. Rounded to 6 digits, so that what is shown is what was run.
 * @throws RangeError for fewer than two values
 */
export function sweepValues(
  { from, to, whole }: { readonly from: number; readonly to: number; readonly whole: boolean },
  count: number,
): readonly number[] {
  if (!(Number.isInteger(count) && count >= 2)) throw new RangeError(`${count} values; expected 2 or more`);
  const values = Array.from({ length: count }, (_, i) => {
    if (i === count - 1) return to;
    const value = from + ((to - from) * i) / (count - 1);
    return whole ? Math.round(value) : Number(value.toPrecision(6));
  });
  return [...new Set(values)];
}

/** Every choice of one value from each of the `lists`, the last list running fastest. */
export function sweepGrid(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return lists.reduce<readonly (readonly number[])[]>(
    (grid, list) => grid.flatMap((point) => list.map((value) => [...point, value])),
    [[]],
  );
}
