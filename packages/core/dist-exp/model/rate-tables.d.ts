import type { Kernel, Sites } from '../processes/kernels/kernel.js';
import type { Model } from './model.js';
/** What a partial belongs to: a concentration, an amount, or the first of the four values of chemistry. */
export declare const CONCENTRATION = 0;
export declare const AMOUNT = 1;
export declare const CHEMISTRY = 2;
/** Values of chemistry that v holds for each vessel after the states: pH, ammonia, carbon dioxide, saturation, hydrogen ion. */
export declare const DERIVED = 5;
/** Processes whose rates are worked out by one kernel. */
interface Group {
    readonly kernel: Kernel;
    readonly sites: readonly Sites[];
}
/**
 * Everything that the instances of a model read, in flat arrays: the reads of instance j are
 * `reads[j] .. reads[j+1]-1`, its coefficients are the j-th of `coefficients`.
 */
export interface RateTables {
    readonly groups: readonly Group[];
    readonly coefficients: readonly Float64Array[];
    readonly reads: Int32Array;
    /** Place of each variable in v, and its partial, as the kernels left it. */
    readonly at: Int32Array;
    readonly d: Float64Array;
    readonly kind: Int32Array;
    /** Where the partial goes in `dependence`: one place, or three (TAN, alkalinity, carbon) for chemistry. */
    readonly slot: Int32Array;
}
/**
 * Lays out the tables.
 * @param plain whether every rate is called one by one, without kernels: slow, for comparison
 */
export declare function layRateTables(model: Model, plain: boolean): RateTables;
export {};
//# sourceMappingURL=rate-tables.d.ts.map