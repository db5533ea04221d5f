import type { Values } from '../model/composition.js';
import type { Estimate } from './actual-vapour-pressure.js';
import { daylightHours } from './daylight-hours.js';
import { extraterrestrialRadiation } from './extraterrestrial-radiation.js';
import type { SunPosition } from './sun-position.js';
import type { WeatherDay, WeatherSite } from './weather-day.js';

/** Solar radiation under a clear sky, MJ m-2 d-1, at a height in m. FAO-56 eq. 37. */
export function clearSkyRadiation(values: Values, extraterrestrial: number, elevation: number): number {
  const share = values.value('weather.clear-sky') + values.value('weather.clear-sky-height') * elevation;
  return share * extraterrestrial;
}

/**
 * Solar radiation of a day, MJ m-2 d-1: measured; or from hours of sunshine (FAO-56 eq. 35); or, with
 * neither, from the daily range of temperature by Hargreaves' radiation formula (eq. 50).
 */
export function solarRadiation(
  values: Values,
  site: WeatherSite,
  day: WeatherDay,
  sun: SunPosition,
): Estimate {
  if (day.radiation !== undefined) return { value: day.radiation };
  const above = extraterrestrialRadiation(values, sun);
  if (day.sunshine !== undefined) {
    const share = day.sunshine / daylightHours(sun);
    const none = values.value('weather.sunshine-none');
    return { value: (none + values.value('weather.sunshine-full') * share) * above };
  }
  const place = site.coastal === true ? 'coastal' : 'interior';
  const perRoot = values.value(`weather.radiation-${place}`);
  return {
    value: perRoot * Math.sqrt(day.high - day.low) * above,
    assumed: `solar radiation from the range of temperature (${place})`,
  };
}
