/** A piece of code that works on the arrays it was written for. */
type Piece = (...arrays: Float64Array[]) => void;
/** Gathers statements into pieces of fitting length. */
export interface Writer {
    /** Adds statements with so many products. */
    add(statements: string, products: number): void;
}
/**
 * Code written out for one shape, without loops and places to look up: several times as fast as loops over
 * short rows. It does the same operations in the same order as the loops beside it, so that results are the
 * same to the last bit. The text holds only the names of its parameters and numbers that index arrays. Where
 * making code from text is forbidden (a page's content security policy), the loops go on.
 */
export declare class StraightLine {
    private readonly parameters;
    private readonly write;
    /** Calls left until code is made, and after that until it is always used. */
    private cold;
    private warming;
    private pieces;
    private possible;
    /**
     * @param parameters names of the arrays
     * @param products how many products the code will have
     * @param write adds the statements in the order in which they run
     */
    constructor(parameters: readonly string[], products: number, write: (writer: Writer) => void);
    /** The pieces, to be called in order; undefined where the caller must go by loops this time. */
    code(): readonly Piece[] | undefined;
    private compile;
}
/**
 * Remembers what was made for a shape (arrays of places), so that many systems of one shape share an ordering
 * and code: runs of one model, members of an ensemble. It holds nothing that depends on values.
 */
export declare class ShapeMemo<T> {
    private entries;
    get(shape: readonly Int32Array[], make: () => T): T;
}
export {};
//# sourceMappingURL=straight-line.d.ts.map