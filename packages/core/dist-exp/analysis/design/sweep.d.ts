import type { Run } from '../../run/run.js';
import type { Condition } from '../measures/condition.js';
import type { Measure } from '../measures/measure.js';
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
export declare function sweepPoint(run: Run, measures: readonly Measure[], conditions: readonly Condition[]): SweepPoint;
/**
 * So many values (`count`) at equal steps `from` one end `to` the other, both among them; whole numbers, each once, where only they make
 * sense. Rounded to 6 digits, so that what is shown is what was run.
 * @throws RangeError for fewer than two values
 */
export declare function sweepValues({ from, to, whole }: {
    readonly from: number;
    readonly to: number;
    readonly whole: boolean;
}, count: number): readonly number[];
/** Every choice of one value from each of the `lists`, the last list running fastest. */
export declare function sweepGrid(lists: readonly (readonly number[])[]): readonly (readonly number[])[];
//# sourceMappingURL=sweep.d.ts.map