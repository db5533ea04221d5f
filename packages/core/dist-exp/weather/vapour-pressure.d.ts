import type { Values } from '../library/values.js';
import type { WeatherDay } from './weather-day.js';
/** Saturation vapour pressure, kPa, at degC. FAO-56 eq. 11. */
export declare function saturationPressure(values: Values, temperature: number): number;
/** Slope of the saturation vapour pressure, kPa/degC, at degC. FAO-56 eq. 13. */
export declare function saturationSlope(values: Values, temperature: number): number;
/** A number that may have been estimated: `assumed` says by what rule, when it was not measured. */
export interface Estimate {
    readonly value: number;
    readonly assumed?: string;
}
/**
 * Actual vapour pressure of a day, kPa, by the best of what was measured: dew point (FAO-56 eq. 14);
 * highest and lowest humidity (17); highest alone (18); mean (19); none of them: the dew point is taken
 * to be the lowest temperature (48).
 */
export declare function actualPressure(values: Values, day: WeatherDay): Estimate;
//# sourceMappingURL=vapour-pressure.d.ts.map