/** A middle and two bands of values, in their unit. */
export interface Bands {
    /** The value below which half of them lie. */
    readonly median: number;
    /** 25 % and 75 %. */
    readonly band50: readonly [number, number];
    /** 5 % and 95 %. */
    readonly band90: readonly [number, number];
}
/** Values, one a member, in a few numbers in their unit. Without values all numbers are NaN. */
export interface Summary extends Bands {
    /** Members that have a value. */
    readonly answered: number;
    /** Arithmetic mean. */
    readonly mean: number;
    /** Standard deviation; NaN for fewer than two. */
    readonly deviation: number;
    /** Lowest value of any member. */
    readonly lowest: number;
    /** Highest value of any member. */
    readonly highest: number;
}
/** Quantiles of values in any order, one for each share (0..1), straight lines between neighbours (d3-array); NaN without values. */
export declare function quantilesOf(values: Iterable<number>, shares: readonly number[]): readonly number[];
/** The middle and the bands by any way of telling quantiles. */
export declare function bandsOf(quantile: (p: number) => number): Bands;
/** Summary of the values that there are (NaN: none). Quantiles by d3-array: straight lines between neighbours. */
export declare function summaryOf(values: Iterable<number>): Summary;
//# sourceMappingURL=quantiles.d.ts.map