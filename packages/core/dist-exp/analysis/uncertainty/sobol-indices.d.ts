import type { Points } from './one-at-a-time.js';
/**
 * A `value` with the interval, `low` to `high`, that holds it in 95 of 100 samplings, as far as the sample can tell.
 */
export interface Estimate {
    readonly value: number;
    readonly low: number;
    readonly high: number;
}
/** What share of the variance of the outcome comes from one input. */
export interface SobolIndices {
    /** Alone: what would go if the input were known. */
    readonly first: Estimate;
    /** Alone and together with others: what would stay if all others were known. */
    readonly total: Estimate;
}
/** Sobol indices of every input, and of how many points they are made. */
export interface SobolAnswer {
    readonly indices: readonly SobolIndices[];
    /** Base points used: those of which every outcome could be worked out. */
    readonly used: number;
}
/**
 * The points of Saltelli's scheme: for each of N `basePoints`, one point of sample A, one of B, and A with
 * each input in turn from B: `inputs` + 2 points a base point, together. A and B are halves of one Sobol
 * sequence moved by `seed`. Throws InputError for a number of base points that cannot be, and more than 400 inputs.
 */
export declare function sobolDesign(inputs: number, basePoints: number, seed: number): Points;
/**
 * First and total Sobol indices from the outcomes at the points of `sobolDesign`: first by Saltelli et al.
 * (Computer Physics Communications 181, 2010, table 2 b), total by Jansen (same, table 2 f), intervals by
 * bootstrap over base points. A base point with a NaN among its outcomes is left out whole. An estimate
 * may lie a little outside 0..1; NaN where the outcome does not vary.
 * @param inputs how many, as given to `sobolDesign`
 * @param options `seed` and number of `resamples` (default 200) of the bootstrap
 */
export declare function sobolIndices(inputs: number, outcomes: ArrayLike<number>, options: {
    readonly seed: number;
    readonly resamples?: number;
}): SobolAnswer;
//# sourceMappingURL=sobol-indices.d.ts.map