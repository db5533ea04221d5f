/**
 * What a film takes of a substrate that must come to it through still water: pure functions of the substrate `s` in
 * bulk water, what the cells would take at most (`most`, per day), their half-saturation `k`, and the transfer `t`
 * through the still water (per day and unit of concentration).
 */
/**
 * Flux F that transfer and use agree on, t (s - s0) = most s0 / (k + s0): the smaller root of
 * F² - (t (s + k) + most) F + t s most = 0. It is most s / (k + s) where transfer is easy, t s where the cells are
 * many, and bends smoothly between the two. Best 1955 (J. Cell. Comp. Physiol. 46:1), as used for films since.
 */
export declare function reached(s: number, most: number, k: number, t: number): number;
/** d(reached)/ds, where `flux` is reached. */
export declare function reachedBySubstrate(s: number, most: number, k: number, t: number, flux: number): number;
/** d(reached)/d(most), where `flux` is reached. */
export declare function reachedByMost(s: number, most: number, k: number, t: number, flux: number): number;
//# sourceMappingURL=film.d.ts.map