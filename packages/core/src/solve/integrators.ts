import type { IntegratorFactory } from './contract.js';
import { explicit } from './explicit.js';
import { rosenbrock } from './rosenbrock.js';

/** Names by which an integrator is chosen. */
export type IntegratorName = 'rosenbrock' | 'odex';

/** The integrators by name. */
export const integrators: Readonly<Record<IntegratorName, IntegratorFactory>> = {
  rosenbrock,
  odex: explicit,
};
