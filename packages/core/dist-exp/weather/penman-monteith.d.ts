import type { Values } from '../library/values.js';
import { type Estimate } from './vapour-pressure.js';
import { type WeatherDay, type WeatherSite } from './weather-day.js';
/** Pressure of the air, kPa, at a height above the sea, m. FAO-56 eq. 7. */
export declare function airPressure(values: Values, elevation: number): number;
/** Pressure of the air as a share of that at the sea (atm), at a height above it, m. FAO-56 eq. 7. */
export declare function pressureShare(values: Values, elevation: number): number;
/**
 * Wind at 2 m, m/s, from wind measured at a height, m (FAO-56 eq. 47; at 2 m itself: as measured). Where
 * none was measured: 2 m/s, the mean of many stations (FAO-56 chapter 3).
 */
export declare function windAtTwoMetres(values: Values, wind: number | undefined, height?: number): Estimate;
/**
 * Reference evapotranspiration of a day with all that led to it. In kPa: air `pressure`, vapour pressure at `saturation`
 * (mean of the day) and `actual`; `slope` of the former, kPa/degC. In MJ m-2 d-1: `extraterrestrial` radiation, what
 * reaches the ground (`radiation`) and would under a clear sky (`clearSky`), and what the crop keeps of it: `netShort`
 * less `netLong` is `net`.
 */
export interface ReferenceDay {
    /** mm/d; may be a little below 0 on a cold, humid day (dew). */
    readonly et0: number;
    readonly pressure: number;
    /** Psychrometric constant, kPa/degC. */
    readonly psychrometric: number;
    readonly slope: number;
    readonly saturation: number;
    readonly actual: number;
    /** At 2 m, m/s. */
    readonly wind: number;
    readonly extraterrestrial: number;
    /** h. */
    readonly daylight: number;
    readonly radiation: number;
    readonly clearSky: number;
    readonly netShort: number;
    readonly netLong: number;
    readonly net: number;
    /** What was not measured and by what rule it was filled in. */
    readonly assumed: readonly string[];
}
/**
 * Reference evapotranspiration by FAO Penman-Monteith over one day (FAO-56 eq. 6, with 8, 9, 12, 40 and no
 * heat into the soil, 42); what was not measured is filled in by the rules of FAO-56 chapter 3.
 * @throws InputError with every value that cannot be true, and where the sun does not rise (eq. 39 then
 *   has no Rs/Rso)
 */
export declare function penmanMonteith(values: Values, site: WeatherSite, day: WeatherDay): ReferenceDay;
//# sourceMappingURL=penman-monteith.d.ts.map