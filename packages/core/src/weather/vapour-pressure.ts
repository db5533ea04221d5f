import type { Values } from '../model/composition.js';

/** Saturation vapour pressure, kPa, at degC. FAO-56 eq. 11. */
export function saturationPressure(values: Values, temperature: number): number {
  const offset = values.value('weather.vapour-offset');
  const exponent = (values.value('weather.vapour-factor') * temperature) / (temperature + offset);
  return values.value('weather.vapour-scale') * Math.exp(exponent);
}

/** Slope of the saturation vapour pressure, kPa/degC, at degC. FAO-56 eq. 13. */
export function saturationSlope(values: Values, temperature: number): number {
  const span = temperature + values.value('weather.vapour-offset');
  return (values.value('weather.vapour-slope') * saturationPressure(values, temperature)) / (span * span);
}
