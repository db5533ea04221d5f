/** Dimensions that the direction numbers reach to. */
export declare const sobolDimensions: number;
/**
 * The Sobol sequence with the direction numbers of Joe and Kuo (2008), in the order of the Gray code
 * (Antonov and Saleev 1979).
 * @param dimensions 1 to `sobolDimensions`; RangeError otherwise
 * @returns the point of an index (0 to 2^32 - 1), one whole number over 2^32 for each dimension
 */
export declare function sobolSequence(dimensions: number): (index: number) => Uint32Array;
//# sourceMappingURL=sobol-sequence.d.ts.map