import type { Values } from '../model/composition.js';

/** Pressure of the air, kPa, at a height above the sea, m. FAO-56 eq. 7. */
export function airPressure(values: Values, elevation: number): number {
  const standard = values.value('weather.temperature-standard');
  const ratio = (standard - values.value('weather.lapse') * elevation) / standard;
  return values.value('weather.pressure-sea') * ratio ** values.value('weather.pressure-exponent');
}
