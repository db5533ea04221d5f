import {
  acidBaseConstants,
  hydrogenIon,
  speciate,
  SPECIATION,
  type AcidBaseConstants,
} from '../chemistry/acid-base.js';
import { waterState } from '../model/layout.js';
import type { Run, Sample } from '../run/run.js';

/** What follows from the composition of the water of one vessel. */
export interface WaterChemistry {
  readonly pH: number;
  /** Un-ionised ammonia, mg N/L. */
  readonly ammonia: number;
  /** Dissolved carbon dioxide, mol m-3. */
  readonly carbonDioxide: number;
}

/**
 * pH, un-ionised ammonia and carbon dioxide of each vessel at one sample, NaN where the water has no pH
 * in 0-14. Formulas: chemistry/acid-base.ts.
 */
export function chemistryOf(run: Run, sample: Sample, cell: number): WaterChemistry {
  const { parameters } = run.model;
  const molar = parameters.value('molar.nitrogen');
  const per = (component: 'tan' | 'alkalinity' | 'carbon'): number =>
    sample.y[waterState(cell, component)] / sample.volume[cell];
  const tan = per('tan');
  const carbon = per('carbon');
  const k: AcidBaseConstants = acidBaseConstants(parameters, sample.temperature[cell]);
  const h = hydrogenIon(per('alkalinity'), carbon, tan / molar, k, Number.NaN);
  const out = new Float64Array(SPECIATION);
  speciate(tan, carbon, h, k, molar, out, 0);
  return { pH: out[0], ammonia: out[1], carbonDioxide: out[2] };
}
