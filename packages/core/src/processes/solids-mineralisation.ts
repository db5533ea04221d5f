import type { Process } from './process.js';
import { arrhenius } from './kinetics/limits.js';
import { firstOrder } from './kinetics/first-order.js';
import { mineralised } from './kinetics/mineral.js';

/** Aerobic mineralisation of suspended solids, per g dry: first order, with oxygen. */
export const solidsMineralisation: Process = {
  id: 'solids-mineralisation',
  title: 'mineralisation of suspended solids',
  place: 'water',
  unit: 'g dry',
  basis: 'volume',
  reads: ['oxygen', 'solids'],
  stoichiometry: () => mineralised('solids'),
  coefficients: (values, at) => [
    values.value('solids.mineralisation-suspended') * arrhenius(values.value('solids.theta'), at.temperature),
    values.value('solids.k-oxygen'),
  ],
  ...firstOrder,
};
