import type { Values } from '../library/values.js';
import type { Estimate } from './vapour-pressure.js';
import type { WeatherDay, WeatherSite } from './weather-day.js';
/** Where the sun stands on a day, seen from a latitude. Angles in radians. */
export interface SunPosition {
    readonly latitude: number;
    readonly declination: number;
    /** Hour angle of sunset: pi where the sun does not set, 0 where it does not rise. */
    readonly sunset: number;
    /** Inverse relative distance of the earth from the sun, squared. */
    readonly nearness: number;
}
/**
 * Position of the sun (FAO-56 eq. 22-25) for degrees north and day of the year. Beyond the polar circles
 * the cosine of eq. 25 leaves -1..1: then the day lasts 24 hours or none.
 */
export declare function sunPosition(values: Values, degrees: number, dayOfYear: number): SunPosition;
/** Hours from sunrise to sunset. FAO-56 eq. 34. */
export declare function daylightHours(sun: SunPosition): number;
/** Solar radiation above the atmosphere, MJ m-2 d-1. FAO-56 eq. 21. */
export declare function extraterrestrialRadiation(values: Values, sun: SunPosition): number;
/** Solar radiation under a clear sky, MJ m-2 d-1, at a height in m. FAO-56 eq. 37. */
export declare function clearSkyRadiation(values: Values, extraterrestrial: number, elevation: number): number;
/**
 * Solar radiation of a day, MJ m-2 d-1: measured; or from hours of sunshine (FAO-56 eq. 35); or, with
 * neither, from the daily range of temperature by Hargreaves' radiation formula (eq. 50).
 */
export declare function solarRadiation(values: Values, site: WeatherSite, day: WeatherDay, sun: SunPosition): Estimate;
/** Short-wave radiation kept by grass, MJ m-2 d-1. FAO-56 eq. 38. */
export declare function netShortWave(values: Values, radiation: number): number;
/**
 * Long-wave radiation lost by grass, MJ m-2 d-1. FAO-56 eq. 39, which counts no sky as clearer than clear:
 * the ratio Rs/Rso is at most 1.
 * @param high highest and lowest air temperature, degC
 * @param vapour actual vapour pressure, kPa
 * @param radiation solar radiation and that under a clear sky, MJ m-2 d-1
 */
export declare function netLongWave(values: Values, high: number, low: number, vapour: number, radiation: number, clearSky: number): number;
//# sourceMappingURL=radiation.d.ts.map