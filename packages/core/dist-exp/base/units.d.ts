/** What a quantity measures, and so what it may be written in. */
export type Dimension = 'length' | 'area' | 'volume' | 'mass' | 'time' | 'temperature' | 'volume-flow' | 'mass-flow' | 'depth-rate' | 'rate' | 'share' | 'share-rate' | 'mole-share' | 'concentration' | 'ammonia' | 'nitrite' | 'nitrate' | 'alkalinity' | 'radiation' | 'light' | 'speed' | 'calcium';
/** What is wrong with a written quantity. */
export interface QuantityFault {
    readonly problem: string;
    readonly expected: string;
    readonly nearest?: string;
}
/** A quantity (`value`) in the internal unit, or what is wrong with it. */
export type QuantityAnswer = {
    readonly value: number;
} | QuantityFault;
/** Every dimension. */
export declare const dimensionNames: readonly Dimension[];
/** What is expected where a quantity stands: `a volume such as "1.8 m3" or "450 L"`. */
export declare function describeDimension(dimension: Dimension): string;
/** Examples of the dimension as written in a file. */
export declare function exampleQuantities(dimension: Dimension): readonly string[];
/** Name of the internal unit of a dimension, as it may be written in a file. */
export declare function internalUnit(dimension: Dimension): string;
/** Writes an internal `value` so that {@link parseQuantity} reads the same number back. */
export declare function formatQuantity(value: number, dimension: Dimension): string;
/**
 * What is wrong with a quantity in the internal unit of its dimension; undefined where nothing is. Only temperatures
 * may be below zero.
 */
export declare function quantityProblem(value: number, dimension: Dimension): string | undefined;
/**
 * Converts a number (`value`) in a named unit to the internal unit of its dimension.
 * The sign is checked too: only temperatures may be below zero.
 */
export declare function convert(value: number, unit: string, dimension: Dimension): QuantityAnswer;
/**
 * Reads a written quantity such as `"450 L"` into the internal unit of its dimension.
 *
 * Never guesses: a bare number, another dimension, an unknown unit, a decimal comma and values that
 * are not finite are answered by what is wrong with them.
 */
export declare function parseQuantity(text: string, dimension: Dimension): QuantityAnswer;
/** A number in one unit as a number in another, where some dimension knows both; undefined where none does. */
export declare function inUnit(value: number, from: string, to: string): number | undefined;
//# sourceMappingURL=units.d.ts.map