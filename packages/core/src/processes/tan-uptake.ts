import type { Process } from './process.js';
import { cropCoefficients, cropDemand, cropDemandPartials } from './kinetics/crop-demand.js';
import { cropKernel } from './kinetics/crop-kernel.js';
import { monod, monodSlope } from './kinetics/limits.js';

/** Ammonium taken up by a crop, per g N: demand x M(TAN) x its largest share. Takes 1 eq of alkalinity per mol N. */
export const tanUptake: Process = {
  id: 'tan-uptake',
  title: 'ammonium uptake by crops',
  place: 'batch',
  unit: 'g N',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'tan'],
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'crop-nitrogen', coefficient: 1 },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  coefficients: (values, at) => [
    ...cropCoefficients(values, at),
    values.value('crop.k-tan'),
    values.value('crop.tan-share'),
  ],
  rate: (v, at, k) => cropDemand(v[at[0]], v[at[1]], k) * k[9] * monod(v[at[2]], k[8]),
  partials: (v, at, k, d) => {
    const demand = cropDemandPartials(v[at[0]], v[at[1]], k, d);
    const share = k[9] * monod(v[at[2]], k[8]);
    d[0] *= share;
    d[1] *= share;
    d[2] = demand * k[9] * monodSlope(v[at[2]], k[8]);
  },
  kernel: cropKernel,
};
