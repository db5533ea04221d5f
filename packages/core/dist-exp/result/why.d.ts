import type { Run } from '../run/run.js';
/** A run at one of its output times: a `day`, d since the start. */
export interface Moment {
    readonly run: Run;
    readonly day: number;
}
/** One cause of a difference: a `value` above 0 (in the unit of the quantity) raises it. */
export interface DifferencePart {
    readonly name: string;
    readonly value: number;
    /**
     * Whether the cause did more or less at the second moment than at the first, whichever way that moved the
     * quantity: less uptake raises it. Counted in water for a flow, in the amount for all else, since the
     * start of each run. Absent where it is no doing (the state at the start, a size, the place itself).
     */
    readonly did?: 'more' | 'less';
}
/** A difference of one quantity, split into what made it. */
export interface Difference {
    readonly quantity: string;
    readonly unit: string;
    /** `to` less `from`. */
    readonly difference: number;
    /** Value at the first moment. */
    readonly from: number;
    /** Value at the second. */
    readonly to: number;
    /** Largest first; causes that changed nothing are left out. */
    readonly parts: readonly DifferencePart[];
    /** Difference less the sum of the parts: rounding only. */
    readonly residual: number;
}
/** How `why` draws the line between inside and outside. */
export interface WhyOptions {
    /**
     * `place`: around the place itself; what other vessels send is one part each. `system`: for a
     * concentration in one vessel, around all water: flows between vessels cancel, and one part says how the
     * vessel stands against the mean of all water; other quantities have no such line. Default `place`.
     */
    readonly around?: 'place' | 'system';
}
/**
 * Why one quantity differs between two moments: of two runs, or of one run at two days. The parts are
 * the processes, flows and actions that made the difference, from the integrated extents and the
 * postings; they sum to it but for rounding (`residual`).
 *
 * An amount A is a sum of what each cause k brought, so its difference is one too. A concentration
 * c = A/V (and any amount per another) is split by the exact identity for finite differences
 *
 *     c2 - c1 = (A2 - A1) (1/V1 + 1/V2)/2  -  (V2 - V1) (A1 + A2)/2 / (V1 V2)
 *
 * where both A2 - A1 and V2 - V1 are sums over causes. So a flow has one part: what it carried and how
 * much its water diluted or (evaporation) concentrated.
 *
 * @param quantity such as `nitrate@sump`, `nitrate@system` (mean of all water), `nitrate-amount@sump`,
 *   `crop-nitrogen@lettuce`; days must be output times
 * @throws InputError for an unknown quantity (with the nearest name), one that is no such sum (such as
 *   pH), a day that is no output time, and one on which the quantity has no value
 */
export declare function why(quantity: string, from: Moment, to: Moment, options?: WhyOptions): Difference;
//# sourceMappingURL=why.d.ts.map