// Reads numbers as: Hargreaves
import { InputError } from '../base/faults.js';
import type { Values } from '../library/values.js';
import { penmanMonteith } from './penman-monteith.js';
import { extraterrestrialRadiation, sunPosition } from './radiation.js';
import { type WeatherDay, weatherFaults, type WeatherSite } from './weather-day.js';

/**
 * Reference evapotranspiration from temperatures and latitude alone, mm/d (Hargreaves, FAO-56 eq. 52; Ra
 * in mm/d by eq. 20). Below a mean of -17.8 degC the formula goes below 0.
 * @throws InputError with every value that cannot be true
 */
export function hargreaves(
  values: Values,
  site: Pick<WeatherSite, 'latitude'>,
  day: Pick<WeatherDay, 'dayOfYear' | 'high' | 'low'>,
): number {
  const { latitude } = site;
  const { dayOfYear, high, low } = day;
  const faults = weatherFaults({ latitude, elevation: 0 }, { dayOfYear, high, low });
  if (faults.length > 0) throw new InputError(faults);
  const sun = sunPosition(values, latitude, dayOfYear);
  const evaporable = values.value('weather.evaporated') * extraterrestrialRadiation(values, sun);
  const warmth = (high + low) / 2 + values.value('weather.hargreaves-offset');
  return values.value('weather.hargreaves') * warmth * Math.sqrt(high - low) * evaporable;
}

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
