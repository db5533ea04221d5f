// Reads numbers as: chemistry of a vessel
import {
  acidBaseConstants,
  hydrogenIon,
  speciate,
  SPECIATION,
  type AcidBaseConstants,
} from '../chemistry/acid-base.js';
import type { Values } from '../library/values.js';
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
export function waterChemistry(values: Values, waters: Waters, vessel: number): WaterChemistry {
  return openWaterChemistry(values)(waters, vessel);
}

/** As `waterChemistry`, for many moments: the constants of a temperature are worked out once. */
export function openWaterChemistry(values: Values): (waters: Waters, vessel: number) => WaterChemistry {
  const molar = values.value('molar.nitrogen');
  const constants = new Map<number, AcidBaseConstants>();
  const out = new Float64Array(SPECIATION);
  return ({ y, volume, temperature }, vessel) => {
    const per = (component: 'tan' | 'alkalinity' | 'carbon'): number =>
      y[waterState(vessel, component)] / volume[vessel];
    const tan = per('tan');
    const carbon = per('carbon');
    const warmth = temperature[vessel];
    const k = constants.get(warmth) ?? acidBaseConstants(values, warmth);
    constants.set(warmth, k);
    const h = hydrogenIon(per('alkalinity'), carbon, tan / molar, k, Number.NaN);
    speciate(tan, carbon, h, k, molar, out, 0);
    return { pH: out[0], ammonia: out[1], carbonDioxide: out[2] };
  };
}
