import type { Model } from '../model/model.js';
import type { Measurable, TestKit } from '../scenario/scenario.js';
/** The water of a system at a moment. */
export interface Waters {
    readonly model: Model;
    readonly y: Float64Array;
    /** m3 in each vessel. */
    readonly volume: ArrayLike<number>;
    /** degC in each vessel. */
    readonly temperature: ArrayLike<number>;
    /** Ionic strength in each vessel, mol L-1. */
    readonly ionic: ArrayLike<number>;
}
/**
 * What is truly there: g m-3 (nitrogen as N), eq m-3, pH, degC or m3. Not finite where a vessel is dry
 * or its water has no pH from 0 to 14.
 */
export declare function trueValue(read: Measurable, waters: Waters, vessel: number): number;
/** A level or reading in twelve digits, so that multiples of a resolution compare as they are written. */
export declare function twelveDigits(value: number): number;
/**
 * What a kit shows of a true value: a normal error added, then rounded to a whole multiple of the resolution.
 * A large absolute error may show less than zero. Draws one number where the kit has an error, else none.
 *
 * @param random uniform numbers in [0, 1)
 */
export declare function readingOf(kit: TestKit, value: number, random: () => number): number;
/** A reading or a level in words, four digits: `2.25 mg N/L`; alkalinity in degrees of hardness as well. */
export declare function describeReading(read: Measurable, value: number): string;
//# sourceMappingURL=test-kit.d.ts.map