import type { Process } from './process.js';
import { arrhenius } from './kinetics/limits.js';
import { firstOrder } from './kinetics/first-order.js';
import { mineralised } from './kinetics/mineral.js';

/** Decay of ammonia oxidisers, per g COD: endogenous respiration, first order, with oxygen. Henze et al. 1987. */
export const aobDecay: Process = {
  id: 'aob-decay',
  title: 'decay of ammonia oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: ['oxygen', 'aob'],
  stoichiometry: () => mineralised('aob'),
  coefficients: (values, at) => [
    values.value('aob.decay') * arrhenius(values.value('aob.decay-theta'), at.temperature),
    values.value('aob.k-oxygen'),
  ],
  ...firstOrder,
};
