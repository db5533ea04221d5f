import {
  acidBaseConstants,
  carbonFromPh,
  hydrogenIon,
  speciate,
  SPECIATION,
} from '../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';

const parameters = createParameters();
const alkalinity = 2;

/** A water with so much TAN (g N m-3) at a pH. */
interface WaterAt {
  readonly pH: number;
  /** degC. */
  readonly temperature: number;
  readonly tan: number;
}

/**
 * pH, un-ionised ammonia (g N m-3) and carbon dioxide (mol m-3) of water with 2 meq/L of alkalinity that was given the
 * carbon for a pH: there and back through the model's chemistry.
 */
export function waterOf({ pH, temperature, tan }: WaterAt): {
  pH: number;
  ammonia: number;
  carbonDioxide: number;
} {
  const k = acidBaseConstants(parameters, temperature);
  const molar = parameters.value('molar.nitrogen');
  const carbon = carbonFromPh(parameters, alkalinity, pH, tan, temperature);
  const out = new Float64Array(SPECIATION);
  speciate(tan, carbon, hydrogenIon(alkalinity, carbon, tan / molar, k, Number.NaN), k, molar, out, 0);
  return { pH: out[0], ammonia: out[1], carbonDioxide: out[2] };
}
