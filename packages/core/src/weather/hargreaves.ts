import { InputError } from '../errors.js';
import type { Values } from '../model/composition.js';
import { extraterrestrialRadiation } from './extraterrestrial-radiation.js';
import { sunPosition } from './sun-position.js';
import type { WeatherDay, WeatherSite } from './weather-day.js';
import { weatherFaults } from './weather-faults.js';

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
