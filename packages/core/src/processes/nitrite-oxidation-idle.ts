import type { Process } from './process.js';
import { nobKernel } from './kinetics/oxidiser-kernel.js';
import { idling, nobActivity, nobActivityPartials, nobCoefficients, nobReads } from './kinetics/oxidiser.js';

/** Nitrite oxidised without growth where the surface is full, per g N: NO2- + 1/2 O2 -> NO3- (1.14 g O2). */
export const nitriteOxidationIdle: Process = {
  id: 'nitrite-oxidation-idle',
  title: 'nitrite oxidation without growth',
  place: 'surface',
  unit: 'g N',
  basis: 'whole',
  reads: nobReads,
  stoichiometry: () => [
    { component: 'nitrite', coefficient: -1 },
    { component: 'nitrate', coefficient: 1 },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
  ],
  coefficients: nobCoefficients,
  ...idling(nobActivity, nobActivityPartials),
  kernel: nobKernel,
};
