import type { Process } from './process.js';
import { carbonDioxideSaturation } from '../chemistry/acid-base.js';
import { exchange } from './kinetics/exchange.js';
import { oxygenTransfer } from './kinetics/transfer.js';

/** Carbon dioxide between water and air, per mol: 0.9 x oxygen transfer x (saturation - dissolved CO2). */
export const carbonDioxideExchange: Process = {
  id: 'carbon-dioxide-exchange',
  title: 'carbon dioxide exchange with air',
  place: 'water',
  unit: 'mol C',
  basis: 'whole',
  reads: ['carbon-dioxide'],
  stoichiometry: () => [
    { component: 'carbon', coefficient: 1 },
    { component: 'carbon-dioxide-gas', coefficient: -1, outside: 'air' },
  ],
  coefficients: (values, at) => [
    values.value('gas.carbon-dioxide-ratio') * oxygenTransfer(values, at),
    carbonDioxideSaturation(values, at.temperature),
  ],
  ...exchange,
};
