import {
  acidBaseConstants,
  hydrogenIon,
  speciate,
  SPECIATION,
  type AcidBaseConstants,
} from '../chemistry/acid-base.js';
import type { Values } from './composition.js';
import { waterState } from './layout.js';

/** What follows from the composition of the water of one vessel. */
export interface WaterChemistry {
  readonly pH: number;
  /** Un-ionised ammonia, mg N/L. */
  readonly ammonia: number;
  /** Dissolved carbon dioxide, mol m-3. */
  readonly carbonDioxide: number;
}

/** Amounts, volumes (m3) and temperatures (degC) of a system at one moment. */
interface Waters {
  readonly y: Float64Array;
  readonly volume: ArrayLike<number>;
  readonly temperature: ArrayLike<number>;
}

/**
 * pH, un-ionised ammonia and carbon dioxide of a vessel, NaN where its water has no pH in 0-14.
 * Formulas: chemistry/acid-base.ts.
 */
export function waterChemistry(
  values: Values,
  { y, volume, temperature }: Waters,
  cell: number,
): WaterChemistry {
  const molar = values.value('molar.nitrogen');
  const per = (component: 'tan' | 'alkalinity' | 'carbon'): number =>
    y[waterState(cell, component)] / volume[cell];
  const tan = per('tan');
  const carbon = per('carbon');
  const k: AcidBaseConstants = acidBaseConstants(values, temperature[cell]);
  const h = hydrogenIon(per('alkalinity'), carbon, tan / molar, k, Number.NaN);
  const out = new Float64Array(SPECIATION);
  speciate(tan, carbon, h, k, molar, out, 0);
  return { pH: out[0], ammonia: out[1], carbonDioxide: out[2] };
}
