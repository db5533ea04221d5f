import type { Values } from '../library/values.js';
import { type WeatherDay, type WeatherSite } from './weather-day.js';
/**
 * Reference evapotranspiration from temperatures and latitude alone, mm/d (Hargreaves, FAO-56 eq. 52; Ra
 * in mm/d by eq. 20). Below a mean of -17.8 degC the formula goes below 0.
 * @throws InputError with every value that cannot be true
 */
export declare function hargreaves(values: Values, site: Pick<WeatherSite, 'latitude'>, day: Pick<WeatherDay, 'dayOfYear' | 'high' | 'low'>): number;
/** How reference evapotranspiration is worked out from weather. */
export type Et0Method = 'penman-monteith' | 'hargreaves';
/**
 * Reference evapotranspiration of one day in the unit of a scenario, m/d (outdoors: no greenhouse
 * factor). Formulas in mm/d, and what they throw: penman-monteith.ts, hargreaves.ts.
 */
export declare function referenceEvapotranspiration(values: Values, method: Et0Method, site: WeatherSite, day: WeatherDay): number;
//# sourceMappingURL=evapotranspiration.d.ts.map