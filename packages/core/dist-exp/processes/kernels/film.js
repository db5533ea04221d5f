/**
 * What a film takes of a substrate that must come to it through still water: pure functions of the substrate `s` in
 * bulk water, what the cells would take at most (`most`, per day), their half-saturation `k`, and the transfer `t`
 * through the still water (per day and unit of concentration).
 */
/** Root of the discriminant of the quadratic in `reached`; never 0 where k and t are above 0. */
function root(s, most, k, t) {
    const gap = t * (s + k) - most;
    return Math.sqrt(gap * gap + 4 * t * k * most);
}
/**
 * Flux F that transfer and use agree on, t (s - s0) = most s0 / (k + s0): the smaller root of
 * F² - (t (s + k) + most) F + t s most = 0. It is most s / (k + s) where transfer is easy, t s where the cells are
 * many, and bends smoothly between the two. Best 1955 (J. Cell. Comp. Physiol. 46:1), as used for films since.
 */
export function reached(s, most, k, t) {
    return (2 * t * s * most) / (t * (s + k) + most + root(s, most, k, t));
}
/** d(reached)/ds, where `flux` is reached. */
export function reachedBySubstrate(s, most, k, t, flux) {
    return (t * (most - flux)) / root(s, most, k, t);
}
/** d(reached)/d(most), where `flux` is reached. */
export function reachedByMost(s, most, k, t, flux) {
    return (t * s - flux) / root(s, most, k, t);
}
//# sourceMappingURL=film.js.map