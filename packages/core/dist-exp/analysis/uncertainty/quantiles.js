import { deviation, mean, quantileSorted } from 'd3-array';
/** Quantiles of values in any order, one for each share (0..1), straight lines between neighbours (d3-array); NaN without values. */
export function quantilesOf(values, shares) {
    const sorted = [...values].sort((a, b) => a - b);
    return shares.map((share) => quantileSorted(sorted, share) ?? Number.NaN);
}
/** The middle and the bands by any way of telling quantiles. */
export function bandsOf(quantile) {
    return {
        median: quantile(0.5),
        band50: [quantile(0.25), quantile(0.75)],
        band90: [quantile(0.05), quantile(0.95)],
    };
}
/** Summary of the values that there are (NaN: none). Quantiles by d3-array: straight lines between neighbours. */
export function summaryOf(values) {
    const sorted = [...values].filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
    return {
        answered: sorted.length,
        mean: mean(sorted) ?? Number.NaN,
        deviation: deviation(sorted) ?? Number.NaN,
        lowest: sorted[0] ?? Number.NaN,
        highest: sorted[sorted.length - 1] ?? Number.NaN,
        ...bandsOf((p) => quantileSorted(sorted, p) ?? Number.NaN),
    };
}
//# sourceMappingURL=quantiles.js.map