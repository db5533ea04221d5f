import type { Process } from './process.js';
import { arrhenius } from './kinetics/limits.js';
import { firstOrder } from './kinetics/first-order.js';
import { mineralised } from './kinetics/mineral.js';

/** Upkeep of fish, per g of body: fed or fasting, body matter is respired and its nitrogen excreted. */
export const upkeep: Process = {
  id: 'upkeep',
  title: 'upkeep of fish (fasting excretion)',
  place: 'cohort',
  unit: 'g fish',
  basis: 'whole',
  reads: ['oxygen', 'fish-mass'],
  stoichiometry: () => mineralised('fish-mass'),
  coefficients: (values, at) => [
    values.value('species.fasting-loss') *
      arrhenius(
        values.value('fish.fasting-theta'),
        at.temperature,
        values.value('species.reference-temperature'),
      ),
    values.value('fish.k-oxygen'),
  ],
  ...firstOrder,
};
