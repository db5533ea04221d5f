import type { Process } from './process.js';
import { oxygenSaturation } from '../chemistry/oxygen.js';
import { exchange } from './kinetics/exchange.js';
import { oxygenTransfer } from './kinetics/transfer.js';

/** Oxygen between water and air, per g O2: transfer x (saturation - concentration). */
export const oxygenExchange: Process = {
  id: 'oxygen-exchange',
  title: 'oxygen exchange with air',
  place: 'water',
  unit: 'g O2',
  basis: 'whole',
  reads: ['oxygen'],
  stoichiometry: () => [
    { component: 'oxygen', coefficient: 1 },
    { component: 'oxygen-gas', coefficient: -1, outside: 'air' },
  ],
  coefficients: (values, at) => [oxygenTransfer(values, at), oxygenSaturation(values, at.temperature)],
  ...exchange,
};
