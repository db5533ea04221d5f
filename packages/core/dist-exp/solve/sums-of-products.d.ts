/** Sums out[i] = Σ a[left p] b[right p] over start[i] <= p < start[i+1]. */
export interface ProductPlaces {
    readonly start: Int32Array;
    readonly left: Int32Array;
    readonly right: Int32Array;
}
declare const MODES: readonly ["set", "add", "negate"];
/** What becomes of a sum: it replaces what is there, is added to it, or replaces it with the sign turned. */
export type SumMode = (typeof MODES)[number];
/** Many short sums of products of two arrays, with places known beforehand. */
export declare class SumsOfProducts {
    private readonly places;
    private readonly mode;
    private readonly line;
    constructor(places: ProductPlaces, mode: SumMode);
    /** Fills (or adds to) out. */
    apply(a: Float64Array, b: Float64Array, out: Float64Array): void;
    private loop;
}
/**
 * Groups products by the sum that they belong to, in the order given.
 * @param target for each product, the sum (0 .. count-1) it belongs to
 * @param left its place in the first array
 * @param right its place in the second array
 */
export declare function groupProducts(target: ArrayLike<number>, left: ArrayLike<number>, right: ArrayLike<number>, count: number): ProductPlaces;
export {};
//# sourceMappingURL=sums-of-products.d.ts.map