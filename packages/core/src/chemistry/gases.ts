// Reads numbers as: saturation of gases
import type { Values } from '../library/values.js';

/** Oxygen in fresh water at saturation under 1 atm, g m-3, at degC. Benson & Krause 1980/84; APHA 4500-O; valid 0-40 degC. */
export function oxygenSaturation(values: Values, temperature: number): number {
  const kelvin = temperature + values.value('kelvin.zero');
  const term = (name: string): number => values.value(`oxygen.saturation.${name}`);
  return Math.exp(
    term('a') +
      term('b') / kelvin +
      term('c') / kelvin ** 2 +
      term('d') / kelvin ** 3 +
      term('e') / kelvin ** 4,
  );
}
