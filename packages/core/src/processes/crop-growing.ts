import type { Process } from './process.js';
import { cropCoefficients, cropGrowth, cropGrowthPartials } from './kinetics/crop-demand.js';
import { cropKernel } from './kinetics/crop-kernel.js';

/** Growth of a crop, per g dry: carbon from air, oxygen to air, by closure. */
export const cropGrowing: Process = {
  id: 'crop-growing',
  title: 'crop growth',
  place: 'batch',
  unit: 'g dry',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen'],
  stoichiometry: () => [
    { component: 'crop-mass', coefficient: 1 },
    { component: 'carbon-dioxide-gas', coefficient: { closes: 'carbon' }, outside: 'air' },
    { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
  ],
  coefficients: cropCoefficients,
  rate: (v, at, k) => cropGrowth(v[at[0]], v[at[1]], k),
  partials: (v, at, k, d) => {
    cropGrowthPartials(v[at[0]], v[at[1]], k, d);
  },
  kernel: cropKernel,
};
