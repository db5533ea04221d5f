import type { Run } from '../../run/run.js';
import type { Condition } from '../ask/condition.js';
import type { Measure } from '../ask/measure.js';
import { NoAnswerError } from '../ask/no-answer-error.js';
import { judgeRun } from '../size/judge-run.js';

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

/** Asks a run for every measure and condition of a sweep. */
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
