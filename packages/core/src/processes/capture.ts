import type { Process } from './process.js';
import { proportional } from './kinetics/first-order.js';

/**
 * Suspended solids caught from the through-flow, per g dry. In a mixed vessel a capture rate
 * Q e/(1-e) takes the share e of what flows in (steady state of Q Cin = Q C + k C).
 */
export const capture: Process = {
  id: 'capture',
  title: 'capture of solids from the flow',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  throughFlow: true,
  reads: ['solids'],
  stoichiometry: () => [
    { component: 'solids', coefficient: -1 },
    { component: 'settled', coefficient: 1 },
  ],
  coefficients: (_values, at) => [(at.inflow * at.capture) / (1 - at.capture)],
  ...proportional,
};
