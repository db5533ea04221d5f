import type { Fault } from '../../errors.js';
import type { LimitResult } from '../../result/limits.js';
import type { Run } from '../../run/run.js';
import type { Scale } from './scale.js';

/** A measure without its text, or all that is wrong with it. */
export type MeasureReading = (Scale & { of(run: Run): number }) | readonly Fault[];

/** A condition without its text. */
export interface ConditionReading {
  /** Of the margin: that of the measure, or 1 for a share of a limit. */
  readonly unit: string;
  /**
   * Judges a run. Throws NoAnswerError where the run broke off or cannot be judged.
   * @param limits of the run, where they are at hand
   */
  judge(run: Run, limits?: readonly LimitResult[]): Judgement;
}

/** How a run stands to a condition. */
export interface Judgement {
  /** How far the run is from not holding: above 0 holds, below 0 does not. */
  readonly margin: number;
  /** Whether it holds: margin > 0, and for limits also 0 (a limit reached is not passed). */
  readonly holds: boolean;
}
