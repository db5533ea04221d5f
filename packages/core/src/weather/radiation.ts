// Reads numbers as: radiation
import { wholePower } from '../base/elementary.js';
import { acos, cos, sin } from '../base/trigonometry.js';
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
export function sunPosition(values: Values, degrees: number, dayOfYear: number): SunPosition {
  const latitude = (degrees * Math.PI) / 180;
  const season = (2 * Math.PI * dayOfYear) / 365;
  const nearness = 1 + values.value('weather.sun-distance') * cos(season);
  const phase = values.value('weather.sun-declination-phase');
  const declination = values.value('weather.sun-declination') * sin(season - phase);
  // -tan(latitude)·tan(declination), eq. 25.
  const cosine = (-sin(latitude) * sin(declination)) / (cos(latitude) * cos(declination));
  const sunset = cosine <= -1 ? Math.PI : cosine >= 1 ? 0 : acos(cosine);
  return { latitude, declination, sunset, nearness };
}

/** Hours from sunrise to sunset. FAO-56 eq. 34. */
export function daylightHours(sun: SunPosition): number {
  return (24 / Math.PI) * sun.sunset;
}

const minutesPerDay = 24 * 60;

/** Solar radiation above the atmosphere, MJ m-2 d-1. FAO-56 eq. 21. */
export function extraterrestrialRadiation(values: Values, sun: SunPosition): number {
  const { latitude, declination, sunset, nearness } = sun;
  const high = sunset * sin(latitude) * sin(declination);
  const round = cos(latitude) * cos(declination) * sin(sunset);
  return (minutesPerDay / Math.PI) * values.value('weather.solar-constant') * nearness * (high + round);
}

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

/** Short-wave radiation kept by grass, MJ m-2 d-1. FAO-56 eq. 38. */
export function netShortWave(values: Values, radiation: number): number {
  return (1 - values.value('weather.albedo')) * radiation;
}

/**
 * Long-wave radiation lost by grass, MJ m-2 d-1. FAO-56 eq. 39, which counts no sky as clearer than clear:
 * the ratio Rs/Rso is at most 1.
 * @param high highest and lowest air temperature, degC
 * @param vapour actual vapour pressure, kPa
 * @param radiation solar radiation and that under a clear sky, MJ m-2 d-1
 */
export function netLongWave(
  values: Values,
  high: number,
  low: number,
  vapour: number,
  radiation: number,
  clearSky: number,
): number {
  const k = (name: string): number => values.value(`weather.${name}`);
  const fourth = (temperature: number): number => wholePower(temperature + k('kelvin'), 4);
  const black = (k('stefan-boltzmann') * (fourth(high) + fourth(low))) / 2;
  const emissivity = k('long-wave-dry') - k('long-wave-vapour') * Math.sqrt(vapour);
  const cloud = k('long-wave-clear') * Math.min(1, radiation / clearSky) - k('long-wave-cloud');
  return black * emissivity * cloud;
}
