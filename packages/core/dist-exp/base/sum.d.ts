/**
 * Sum without rounding until the end, so that a balance of
 * large flows shows its residual and not the order in which it was added up. Any NaN or infinity
 * among the values shows in the sum.
 * @param values what to add; an empty list sums to 0
 */
export declare function sum(values: Iterable<number>): number;
//# sourceMappingURL=sum.d.ts.map