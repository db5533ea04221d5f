import type { IntegratorFactory } from './contract.js';
/**
 * The explicit integrator, a second one that shares nothing with `rosenbrock`: extrapolation of the
 * explicit midpoint rule (odex) on states and extents together. It stops at every wanted time instead of
 * interpolating. `maxSteps` bounds the tries in one segment (1,000,000 unless said otherwise).
 */
export declare const explicit: IntegratorFactory;
//# sourceMappingURL=explicit.d.ts.map