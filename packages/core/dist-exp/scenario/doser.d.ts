/**
 * A doser that holds pH or alkalinity of the water of a vessel by proportional feed: nothing on the far side of the
 * `setPoint` (pH, or eq m-3), its `most` (g d-1, of all products together, in equal masses) at one `band` beyond it,
 * smoothly between.
 */
export interface Doser {
    readonly hold: 'pH' | 'alkalinity';
    /** Into which it is dosed. */
    readonly vessel: string;
    /** The vessel whose water is measured; absent: the same. */
    readonly probe?: string;
    readonly setPoint: number;
    readonly products: readonly string[];
    readonly band: number;
    readonly most: number;
    /** 1: base, fed below the set point; -1: acid, fed above. */
    readonly sign: 1 | -1;
}
//# sourceMappingURL=doser.d.ts.map