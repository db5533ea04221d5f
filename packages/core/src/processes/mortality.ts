import type { Process } from './process.js';
import { proportional } from './kinetics/first-order.js';

/** Fish that die and are taken out, per g of body. */
export const mortality: Process = {
  id: 'mortality',
  title: 'dead fish, mass',
  place: 'cohort',
  unit: 'g fish',
  basis: 'whole',
  reads: ['fish-mass'],
  stoichiometry: () => [
    { component: 'fish-mass', coefficient: -1 },
    { component: 'fish-mass', coefficient: 1, outside: 'dead fish' },
  ],
  coefficients: (values) => [values.value('species.mortality')],
  ...proportional,
};
