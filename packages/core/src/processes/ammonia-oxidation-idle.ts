import type { Process } from './process.js';
import { aobKernel } from './kinetics/oxidiser-kernel.js';
import { aobActivity, aobActivityPartials, aobCoefficients, aobReads, idling } from './kinetics/oxidiser.js';

/**
 * Ammonia oxidised without growth where the surface is full, per g N: TAN to nitrite,
 * NH4+ + 3/2 O2 -> NO2- + H2O + 2 H+ (3.43 g O2 and 2 eq of alkalinity per mol N).
 */
export const ammoniaOxidationIdle: Process = {
  id: 'ammonia-oxidation-idle',
  title: 'ammonia oxidation without growth',
  place: 'surface',
  unit: 'g N',
  basis: 'whole',
  reads: aobReads,
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'nitrite', coefficient: 1 },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  coefficients: aobCoefficients,
  ...idling(aobActivity, aobActivityPartials),
  kernel: aobKernel,
};
