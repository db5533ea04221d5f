import type { Process } from './process.js';
import { proportional } from './kinetics/first-order.js';

/** Fish that die and are taken out, per fish. */
export const mortalityCount: Process = {
  id: 'mortality-count',
  title: 'dead fish, number',
  place: 'cohort',
  unit: 'fish',
  basis: 'whole',
  reads: ['fish-number'],
  stoichiometry: () => [
    { component: 'fish-number', coefficient: -1 },
    { component: 'fish-number', coefficient: 1, outside: 'dead fish' },
  ],
  coefficients: (values) => [values.value('species.mortality')],
  ...proportional,
};
