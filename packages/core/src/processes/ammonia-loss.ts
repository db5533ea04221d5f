import type { Process } from './process.js';
import { proportional } from './kinetics/first-order.js';

/** Ammonia to air, per g N: velocity k e^(c(T-20)) x open surface x un-ionised ammonia (Stratton 1969). */
export const ammoniaLoss: Process = {
  id: 'ammonia-loss',
  title: 'ammonia to air',
  place: 'water',
  unit: 'g N',
  basis: 'whole',
  reads: ['ammonia'],
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'ammonia-gas', coefficient: 1, outside: 'air' },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  coefficients: (values, at) => [
    values.value('gas.ammonia-velocity') *
      Math.exp(values.value('gas.ammonia-exponent') * (at.temperature - 20)) *
      at.open,
  ],
  ...proportional,
};
