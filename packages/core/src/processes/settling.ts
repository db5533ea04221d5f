import type { Process } from './process.js';
import { proportional } from './kinetics/first-order.js';

/** Suspended solids that sink to the floor, per g dry: settling velocity x floor x concentration. */
export const settling: Process = {
  id: 'settling',
  title: 'settling of solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: ['solids'],
  stoichiometry: () => [
    { component: 'solids', coefficient: -1 },
    { component: 'settled', coefficient: 1 },
  ],
  coefficients: (values, at) => [values.value('solids.settling-velocity') * at.floor],
  ...proportional,
};
