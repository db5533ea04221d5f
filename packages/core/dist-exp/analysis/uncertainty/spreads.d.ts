/** What is known of the spread of many cells, each with one value a member at most. */
export interface Spreads {
    readonly kind: 'exact' | 'binned';
    /** Puts the values of a member into cells 0, 1, ...; values that are not finite are left out. */
    add(member: number, values: ArrayLike<number>): void;
    /** Number of values of a cell. */
    count(cell: number): number;
    /**
     * The value below which a share p (0..1) of the values lies, straight lines between neighbours; NaN where
     * there are none. Binned: off by no more than `width`.
     */
    quantile(cell: number, p: number): number;
    /** How far a quantile may be off: 0 where exact, else the width of a bin. */
    width(cell: number): number;
    /** Adds what another holds of the same cells; it must hold other members. */
    merge(other: SpreadsState): void;
    /** Everything held, in one form whatever the order in which it came. Arrays are not copied. */
    state(): SpreadsState;
}
/** A `Spreads` as plain data: its `arrays` in an order of its own, to be kept and given back to `merge`. */
export interface SpreadsState {
    readonly kind: 'exact' | 'binned';
    readonly arrays: readonly (Float64Array | Int16Array | Uint16Array | Uint32Array)[];
}
/** Spreads of few members: every value is kept. */
export declare function exactSpreads(cells: number, members: number): Spreads;
/**
 * Spreads of any number of members in memory that does not grow with it. Each cell counts in at most 256
 * bins whose width is the least power of two that spans its values; edges are multiples of the width, so
 * that two bins make one exactly when the span grows. What is held follows from the values alone, whatever
 * the order or the shards in which they came. A bin is between 1/256 and 1/127 of the span, but never finer than 2^-44 of
 * the largest value: bin numbers stay exact.
 */
export declare function binnedSpreads(cells: number, members: number): Spreads;
/** Spreads of cells over members: exact for up to 128, binned for more. */
export declare function openSpreads(cells: number, members: number): Spreads;
//# sourceMappingURL=spreads.d.ts.map