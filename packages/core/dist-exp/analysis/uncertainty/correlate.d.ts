import type { RankCorrelation } from '../../library/correlations.js';
/**
 * Makes independent uniform numbers correlated by ranks: a Gaussian copula whose normal correlation is
 * 2 sin(pi rank / 6) (Pearson 1907). Numbers that no correlation names stay as they are; the first of
 * each that are named keeps its strata, the others keep their distribution.
 *
 * Throws InputError for ids that are not drawn, and correlations that cannot hold together.
 */
export declare function correlate(given: readonly RankCorrelation[], ids: readonly string[]): (u: Float64Array) => Float64Array;
//# sourceMappingURL=correlate.d.ts.map