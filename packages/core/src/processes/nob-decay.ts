import type { Process } from './process.js';
import { arrhenius } from './kinetics/limits.js';
import { firstOrder } from './kinetics/first-order.js';
import { mineralised } from './kinetics/mineral.js';

/** Decay of nitrite oxidisers, per g COD: endogenous respiration, first order, with oxygen. Henze et al. 1987. */
export const nobDecay: Process = {
  id: 'nob-decay',
  title: 'decay of nitrite oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: ['oxygen', 'nob'],
  stoichiometry: () => mineralised('nob'),
  coefficients: (values, at) => [
    values.value('nob.decay') * arrhenius(values.value('nob.decay-theta'), at.temperature),
    values.value('nob.k-oxygen'),
  ],
  ...firstOrder,
};
