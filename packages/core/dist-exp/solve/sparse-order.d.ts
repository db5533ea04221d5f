import type { SparsePattern } from './contract.js';
/**
 * Numbers 0 .. size-1, each with a count that may change, taken least count first, ties by the lower number. A binary
 * heap in which an outdated entry stays until it comes up.
 */
export declare class LeastFirst {
    private readonly entries;
    private readonly counts;
    constructor(size: number);
    /** Gives a number its count, or a new one. */
    set(number: number, count: number): void;
    /** Takes the number with the least count; -1 when none is left. */
    take(): number;
    private pop;
}
/** The outcome of a symbolic elimination. */
export interface Elimination {
    /** order[k]: the row and column eliminated as the k-th. */
    readonly order: Int32Array;
    /** Places of L and U together, in the new numbering, columns ascending, every diagonal present. */
    readonly filled: SparsePattern;
}
/**
 * Symbolic elimination of an unsymmetric square pattern with pivots on the diagonal, each time the one
 * with the least Markowitz count (rows − 1)(columns − 1); ties go to the lower number. Source [R]: Duff,
 * Erisman & Reid, Direct Methods for Sparse Matrices (Oxford 1986), section 7.2.
 */
export declare function eliminate(pattern: SparsePattern): Elimination;
//# sourceMappingURL=sparse-order.d.ts.map