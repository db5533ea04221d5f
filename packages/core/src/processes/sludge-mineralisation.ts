import type { Process } from './process.js';
import { arrhenius } from './kinetics/limits.js';
import { firstOrder } from './kinetics/first-order.js';
import { mineralised } from './kinetics/mineral.js';

/** Aerobic mineralisation of the share of settled solids that oxygen reaches, per g dry. */
export const sludgeMineralisation: Process = {
  id: 'sludge-mineralisation',
  title: 'mineralisation of settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: ['oxygen', 'settled'],
  stoichiometry: () => mineralised('settled'),
  coefficients: (values, at) => [
    values.value('solids.mineralisation-settled') *
      arrhenius(values.value('solids.theta'), at.temperature) *
      values.value('solids.exposed'),
    values.value('solids.k-oxygen'),
  ],
  ...firstOrder,
};
