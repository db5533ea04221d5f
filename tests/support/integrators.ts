import type { IntegratorFactory } from '../../packages/core/src/solve/contract.js';
import { explicit } from '../../packages/core/src/solve/explicit.js';
import { rosenbrock } from '../../packages/core/src/solve/rosenbrock.js';

/** Both integrators by the names that they bear. */
export const integrators = {
  rosenbrock,
  odex: explicit,
} as const satisfies Readonly<Record<string, IntegratorFactory>>;

/** A name of one of them. */
export type IntegratorName = keyof typeof integrators;
