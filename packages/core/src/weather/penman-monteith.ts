// Reads numbers as: Penman-Monteith
import { log, pow } from '../base/elementary.js';
import { InputError } from '../base/faults.js';
import type { Values } from '../library/values.js';
import {
  clearSkyRadiation,
  daylightHours,
  extraterrestrialRadiation,
  netLongWave,
  netShortWave,
  solarRadiation,
  sunPosition,
} from './radiation.js';
import { actualPressure, type Estimate, saturationPressure, saturationSlope } from './vapour-pressure.js';
import { type WeatherDay, weatherFaults, type WeatherSite } from './weather-day.js';

/** Pressure of the air, kPa, at a height above the sea, m. FAO-56 eq. 7. */
export function airPressure(values: Values, elevation: number): number {
  const standard = values.value('weather.temperature-standard');
  const ratio = (standard - values.value('weather.lapse') * elevation) / standard;
  return values.value('weather.pressure-sea') * pow(ratio, values.value('weather.pressure-exponent'));
}

/** Pressure of the air as a share of that at the sea (atm), at a height above it, m. FAO-56 eq. 7. */
export function pressureShare(values: Values, elevation: number): number {
  return elevation === 0 ? 1 : airPressure(values, elevation) / airPressure(values, 0);
}

/** Height for which the Penman-Monteith equation is written, m. */
const reference = 2;

/**
 * Wind at 2 m, m/s, from wind measured at a height, m (FAO-56 eq. 47; at 2 m itself: as measured). Where
 * none was measured: 2 m/s, the mean of many stations (FAO-56 chapter 3).
 */
export function windAtTwoMetres(values: Values, wind: number | undefined, height = reference): Estimate {
  if (wind === undefined) {
    const value = values.value('weather.wind-missing');
    return { value, assumed: `wind of ${value} m/s` };
  }
  if (height === reference) return { value: wind };
  const inner = values.value('weather.wind-height') * height - values.value('weather.wind-displacement');
  return { value: (wind * values.value('weather.wind-profile')) / log(inner) };
}

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
export function penmanMonteith(values: Values, site: WeatherSite, day: WeatherDay): ReferenceDay {
  const faults = weatherFaults(site, day);
  if (faults.length > 0) throw new InputError(faults);
  const k = (name: string): number => values.value(`weather.${name}`);
  const { high, low } = day;
  const mean = (high + low) / 2;
  const sun = sunPosition(values, site.latitude, day.dayOfYear);
  const extraterrestrial = extraterrestrialRadiation(values, sun);
  if (!(extraterrestrial > 0)) {
    const got = `day ${day.dayOfYear} at ${site.latitude} degrees`;
    throw new InputError([{ key: 'latitude', got, problem: 'the sun does not rise on this day' }]);
  }
  const pressure = airPressure(values, site.elevation);
  const psychrometric = k('psychrometric') * pressure;
  const slope = saturationSlope(values, mean);
  const saturation = (saturationPressure(values, high) + saturationPressure(values, low)) / 2;
  const actual = actualPressure(values, day);
  const wind = windAtTwoMetres(values, day.wind, site.windHeight);
  const radiation = solarRadiation(values, site, day, sun);
  const clearSky = clearSkyRadiation(values, extraterrestrial, site.elevation);
  const netShort = netShortWave(values, radiation.value);
  const netLong = netLongWave(values, high, low, actual.value, radiation.value, clearSky);
  const net = netShort - netLong;
  const drying = (k('aerodynamic') / (mean + k('aerodynamic-kelvin'))) * wind.value;
  const energy = k('evaporated') * slope * net;
  const air = psychrometric * drying * (saturation - actual.value);
  return {
    et0: (energy + air) / (slope + psychrometric * (1 + k('wind-resistance') * wind.value)),
    pressure,
    psychrometric,
    slope,
    saturation,
    actual: actual.value,
    wind: wind.value,
    extraterrestrial,
    daylight: daylightHours(sun),
    radiation: radiation.value,
    clearSky,
    netShort,
    netLong,
    net,
    assumed: [actual, radiation, wind].flatMap(({ assumed }) => (assumed === undefined ? [] : [assumed])),
  };
}
