// Reads numbers as: saturation of gases
import { exp, expm1, wholePower } from '../base/elementary.js';
import type { Values } from '../library/values.js';

/**
 * Oxygen in fresh water at saturation, g m-3, at degC under a pressure of the air, atm. Benson & Krause 1980/84; APHA
 * 4500-O; valid 0-40 degC, 0.5-1.1 atm. Air over water is moist, so at half the pressure is a little less than half.
 */
export function oxygenSaturation(values: Values, temperature: number, pressure = 1): number {
  const kelvin = temperature + values.value('kelvin.zero');
  const term = (name: string): number => values.value(`oxygen.saturation.${name}`);
  const atSea = exp(
    term('a') +
      term('b') / kelvin +
      term('c') / wholePower(kelvin, 2) +
      term('d') / wholePower(kelvin, 3) +
      term('e') / wholePower(kelvin, 4),
  );
  const under = (name: string): number => values.value(`oxygen.pressure.${name}`);
  const vapour = exp(under('a') + under('b') / kelvin + under('c') / wholePower(kelvin, 2));
  const second = under('d') + under('e') * temperature + under('f') * wholePower(temperature, 2);
  const part = (atm: number): number => (1 - vapour / atm) * (1 - second * atm);
  return (atSea * pressure * part(pressure)) / part(1);
}

/** Below this many times its fill, what a bubble takes on leaves its air as it was: the series serves. */
const SMALL = 1e-6;

/**
 * Share of the transfer of an open surface that rising air still gives, which fills up as it rises (plug flow):
 * (1 - e^-n)/n, 1 where n is 0.
 * @param n transfer over what the air can carry away: units of transfer
 */
export function carriedShare(n: number): number {
  return n < SMALL ? 1 - n / 2 : -expm1(-n) / n;
}
