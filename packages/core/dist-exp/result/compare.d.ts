import type { Outcome } from '../run/run.js';
import type { Budget } from './budget.js';
import { type Share } from './fates.js';
import type { Verdict } from './judge.js';
import type { PlacedLimit } from './limit-check.js';
import type { LimitResult } from './limits.js';
import type { Series } from './series.js';
import type { RunVerdict } from './verdict.js';
/** What one run says, as far as it is compared with others: from a run just made or from a saved document. */
export interface RunAccount {
    readonly title: string;
    readonly outcome: Outcome;
    /** Output times, d, ascending, at least one. */
    readonly time: readonly number[];
    readonly series: readonly (Pick<Series, 'name' | 'unit'> & {
        readonly values: ArrayLike<number>;
    })[];
    /** Names of the series worth comparing, in the order in which a person would read them. */
    readonly keys: readonly string[];
    readonly limits: readonly LimitResult[];
    readonly verdict: RunVerdict;
    /** Date of day 0, `yyyy-mm-dd`. */
    readonly startDate: string;
    /** Of the whole system. */
    readonly nitrogen: Budget;
    readonly water: Budget;
}
/** One quantity in one run. */
export interface QuantityOfRun {
    /** At the last output time, in the unit of the quantity. */
    readonly end: number;
    /** Of all output times, likewise. */
    readonly highest: number;
    /** When it is highest first, d. */
    readonly highestAt: number;
}
/** One quantity side by side. */
export interface ComparedQuantity {
    /** Of the series, such as `nitrate@sump`. */
    readonly name: string;
    readonly unit: string;
    /** One for each run; null where a run has no such series or it has no value. */
    readonly runs: readonly (QuantityOfRun | null)[];
    /**
     * Another run less the first, of those the farthest away, as a share of the largest size that the
     * quantity reaches in any run; NaN where the first run or all others lack it. At the last output time.
     */
    readonly end: number;
    /** The same of the highest values. */
    readonly highest: number;
}
/** Where a run first differs from the first one. */
export interface Parting {
    /** d. */
    readonly day: number;
    readonly quantity: string;
    /** Value of the first run on that day. */
    readonly first: number;
    /** Value of this one on that day. */
    readonly other: number;
}
/** How far apart a quantity is, at its end or its highest; what cannot be compared comes last. */
export declare function apartness({ end, highest }: ComparedQuantity): number;
/** A named part of several balances, one amount and share for each run (0 where a run has none). */
export interface ComparedShare {
    readonly name: string;
    readonly runs: readonly Omit<Share, 'name'>[];
}
/** Where a quantity came from and went to in several runs. */
export interface ComparedFates {
    /** All that came, in each run. */
    readonly totals: readonly number[];
    readonly from: readonly ComparedShare[];
    readonly to: readonly ComparedShare[];
}
/** A limit that some runs passed and others did not. */
export interface ComparedLimit extends PlacedLimit {
    /** One for each run; null where a run has no such limit (nobody it is for, no such place). */
    readonly runs: readonly (Verdict | null)[];
}
/** Several runs side by side. Every list with one entry for each run is in the order of the runs. */
export interface Comparison {
    /** Last output time of each run, d. */
    readonly ends: readonly number[];
    /** Share by which two values must differ to be apart. */
    readonly apart: number;
    /** Key quantities, the largest relative difference first. */
    readonly quantities: readonly ComparedQuantity[];
    /** When each run but the first parts from the first; null for never. */
    readonly partings: readonly (Parting | null)[];
    /** Limits passed in some runs and not in all. */
    readonly limits: readonly ComparedLimit[];
    readonly nitrogen: ComparedFates;
    readonly water: ComparedFates;
}
/**
 * Puts two or more runs side by side; differences are those of the others from the first.
 * @param apart share of the largest size of a quantity by which values must differ to be apart, 0..1
 * @throws RangeError for fewer than two runs or a share outside 0..1
 */
export declare function compareRuns(accounts: readonly RunAccount[], apart: number): Comparison;
//# sourceMappingURL=compare.d.ts.map