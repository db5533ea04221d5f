import { waterChemistry, type WaterChemistry } from '../model/water-chemistry.js';
import type { SampledRun, Sample } from '../run/run.js';

/** pH, un-ionised ammonia and carbon dioxide of a vessel at one sample, NaN where the water has no pH in 0-14. */
export function chemistryOf(run: SampledRun, sample: Sample, vessel: number): WaterChemistry {
  return waterChemistry(run.model.parameters, sample, vessel);
}
