import { type RankCorrelation } from '../../library/correlations.js';
/**
 * The place of i in a random order of 0 .. n-1, worked out alone, so that no order of a million need be
 * kept: a Feistel network over the next power of four (Luby and Rackoff 1988), gone through again until it
 * ends below n (cycle walking).
 * @param n 1 to 2^32
 */
export declare function placeOf(i: number, n: number, key: number): number;
/** How members are drawn. */
export interface Sampling {
    /** `latin-hypercube`: each number has one member in each of N strata. `sobol`: a low-discrepancy sequence. */
    readonly method: 'latin-hypercube' | 'sobol';
    /** Number of members, 1 to 2^32. */
    readonly members: number;
    /** Whole number from 0 to 2^53 - 1. */
    readonly seed: number;
    /** Beside those of the tables, which hold between numbers that none of these names. */
    readonly correlations?: readonly RankCorrelation[];
}
/**
 * Opens the draws of an ensemble: uniform numbers in [0, 1) of a member, one for each id. They depend on
 * the sampling, the id and the member alone (a Latin hypercube: also on N; Sobol: also on the place of the
 * id), so that shards and resumed runs agree.
 *
 * Throws InputError for a number of members or a seed that cannot be, too many numbers for Sobol, and
 * correlations that cannot be.
 */
export declare function openSampling(sampling: Sampling, ids: readonly string[]): (member: number) => Float64Array;
//# sourceMappingURL=sampling.d.ts.map