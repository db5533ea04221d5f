import type { Process } from './process.js';
import { aobKernel } from './kinetics/oxidiser-kernel.js';
import { aobActivity, aobActivityPartials, aobCoefficients, aobReads, growing } from './kinetics/oxidiser.js';

/**
 * Growth of ammonia oxidisers on ammonia, per g COD of cells: 1/Y g N to nitrite, cell nitrogen
 * from TAN; oxygen, alkalinity and inorganic carbon by closure (3.43 - Y g O2 per g N, 2 eq per mol N).
 * Henze et al. 1987 (Monod growth); rate per surface limited by room.
 */
export const ammoniaOxidation: Process = {
  id: 'ammonia-oxidation',
  title: 'growth of ammonia oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: aobReads,
  stoichiometry: (values) => [
    { component: 'aob', coefficient: 1 },
    { component: 'nitrite', coefficient: 1 / values.value('aob.yield') },
    { component: 'tan', coefficient: -1 / values.value('aob.yield') - values.value('nitrifier.nitrogen') },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  coefficients: aobCoefficients,
  ...growing(aobActivity, aobActivityPartials),
  kernel: aobKernel,
};
