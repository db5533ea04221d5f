import type { Fault } from '../../base/faults.js';
import type { Run } from '../../run/run.js';
import type { Scenario } from '../../scenario/scenario.js';
import { type PhrasePart } from './phrase.js';
/** The part of a run that a measure looks at, and the time over which it averages first. */
export interface Window {
    /** d since the start. */
    readonly from: number;
    /** d; absent: the end of the run. */
    readonly to?: number;
    /** d; 0: not averaged. */
    readonly averaging: number;
}
type Clock = Pick<Scenario, 'days' | 'startDate' | 'saved'>;
/**
 * Reads the joining words `averaged TIME`, `from WHEN` and `to WHEN` against the clock of a run.
 * @returns the window, and all that is wrong with it
 */
export declare function windowOf(parts: readonly PhrasePart[], clock: Clock): {
    readonly window: Window;
    readonly faults: readonly Fault[];
};
/** Values at ascending times, straight lines between them. */
export interface Span {
    readonly times: readonly number[];
    readonly values: Float64Array;
}
/**
 * The span of a series of a run that a measure looks at. Throws NoAnswerError where a value is missing
 * that ought to be there, or the run ends too early.
 */
export declare function spanOfRun(run: Run, series: string, window: Window): Span;
/** Time-weighted mean of the straight lines, over the lines whose ends both have a value. */
declare function mean({ times, values }: Span): number;
/** One number for a span of a series; NaN where no value is there to be counted. */
export declare const statistics: {
    readonly highest: (span: Span) => number;
    readonly lowest: (span: Span) => number;
    readonly mean: typeof mean;
    readonly first: ({ values }: Span) => number;
    readonly last: ({ values }: Span) => number;
    readonly change: (span: Span) => number;
};
export type StatisticName = keyof typeof statistics;
export {};
//# sourceMappingURL=window.d.ts.map