import type { Process } from './process.js';
import { nobKernel } from './kinetics/oxidiser-kernel.js';
import { growing, nobActivity, nobActivityPartials, nobCoefficients, nobReads } from './kinetics/oxidiser.js';

/**
 * Growth of nitrite oxidisers, per g COD of cells: 1/Y g N of nitrite to nitrate (1.14 - Y g O2 per
 * g N), cell nitrogen from nitrite too, by assimilatory reduction, so that growth ends with its own
 * substrate; inhibited by free ammonia (Anthonisen et al. 1976; Hiatt & Grady 2008).
 */
export const nitriteOxidation: Process = {
  id: 'nitrite-oxidation',
  title: 'growth of nitrite oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: nobReads,
  stoichiometry: (values) => [
    { component: 'nob', coefficient: 1 },
    {
      component: 'nitrite',
      coefficient: -1 / values.value('nob.yield') - values.value('nitrifier.nitrogen'),
    },
    { component: 'nitrate', coefficient: 1 / values.value('nob.yield') },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  coefficients: nobCoefficients,
  ...growing(nobActivity, nobActivityPartials),
  kernel: nobKernel,
};
