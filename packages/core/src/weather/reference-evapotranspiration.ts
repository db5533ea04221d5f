import type { Values } from '../model/composition.js';
import { hargreaves } from './hargreaves.js';
import { penmanMonteith } from './penman-monteith.js';
import type { WeatherDay, WeatherSite } from './weather-day.js';

/** How reference evapotranspiration is worked out from weather. */
export type Et0Method = 'penman-monteith' | 'hargreaves';

const MILLIMETRES = 1000;

/**
 * Reference evapotranspiration of one day in the unit of a scenario, m/d (outdoors: no greenhouse
 * factor). Formulas in mm/d, and what they throw: penman-monteith.ts, hargreaves.ts.
 */
export function referenceEvapotranspiration(
  values: Values,
  method: Et0Method,
  site: WeatherSite,
  day: WeatherDay,
): number {
  const depth =
    method === 'hargreaves' ? hargreaves(values, site, day) : penmanMonteith(values, site, day).et0;
  return depth / MILLIMETRES;
}
