// Reads numbers as: solubility of lime
import { log10, pow10 } from '../base/elementary.js';
import type { Values } from '../library/values.js';

/** Solubility product of calcite, mol2 L-2, without activities, at degC. Plummer & Busenberg 1982. */
export function calciteSolubility(values: Values, temperature: number): number {
  const kelvin = temperature + values.value('kelvin.zero');
  const term = (name: string): number => values.value(`calcite.ks.${name}`);
  return pow10(term('a') + term('b') * kelvin + term('c') / kelvin + term('d') * log10(kelvin));
}

/** cm s-1 as m d-1, and mmol cm-2 s-1 as mol m-2 d-1. */
const VELOCITY = 864;
const FLUX = 864_000;
/** Above this the published law has other numbers for water, degC. */
const WARM = 25;

/** How fast clean calcite dissolves: by `hydrogen` ions and `carbonDioxide`, m d-1, and by `water`, mol m-2 d-1. */
export interface CalciteAttack {
  readonly hydrogen: number;
  readonly carbonDioxide: number;
  readonly water: number;
}

/** How fast clean calcite dissolves in water without any, at degC. Plummer, Wigley & Parkhurst 1978. */
export function calciteAttack(values: Values, temperature: number): CalciteAttack {
  const kelvin = temperature + values.value('kelvin.zero');
  const k = (a: string, b: string): number =>
    pow10(values.value(`calcite.rate.${a}`) + values.value(`calcite.rate.${b}`) / kelvin);
  return {
    hydrogen: VELOCITY * k('k1.a', 'k1.b'),
    carbonDioxide: VELOCITY * k('k2.a', 'k2.b'),
    water: FLUX * (temperature > WARM ? k('k3.warm-a', 'k3.warm-b') : k('k3.a', 'k3.b')),
  };
}
