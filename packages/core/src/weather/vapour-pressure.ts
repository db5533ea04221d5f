// Reads numbers as: vapour pressure
import { exp } from '../base/elementary.js';
import type { Values } from '../library/values.js';
import type { WeatherDay } from './weather-day.js';

/** Saturation vapour pressure, kPa, at degC. FAO-56 eq. 11. */
export function saturationPressure(values: Values, temperature: number): number {
  const offset = values.value('weather.vapour-offset');
  const exponent = (values.value('weather.vapour-factor') * temperature) / (temperature + offset);
  return values.value('weather.vapour-scale') * exp(exponent);
}

/** Slope of the saturation vapour pressure, kPa/degC, at degC. FAO-56 eq. 13. */
export function saturationSlope(values: Values, temperature: number): number {
  const span = temperature + values.value('weather.vapour-offset');
  return (values.value('weather.vapour-slope') * saturationPressure(values, temperature)) / (span * span);
}

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
export function actualPressure(values: Values, day: WeatherDay): Estimate {
  const { dewPoint, humidityHigh, humidityLow, humidity } = day;
  if (dewPoint !== undefined) return { value: saturationPressure(values, dewPoint) };
  const atLow = saturationPressure(values, day.low);
  const atHigh = saturationPressure(values, day.high);
  if (humidityHigh !== undefined && humidityLow !== undefined) {
    return { value: (atLow * humidityHigh + atHigh * humidityLow) / 2 };
  }
  if (humidityHigh !== undefined) return { value: atLow * humidityHigh };
  if (humidity !== undefined) return { value: (humidity * (atHigh + atLow)) / 2 };
  return { value: atLow, assumed: 'dew point from the lowest temperature' };
}
