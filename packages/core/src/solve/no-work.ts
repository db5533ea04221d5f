import type { WorkCounts } from './contract.js';

/** Work counts at zero. */
export function noWork(): WorkCounts {
  return { steps: 0, rejected: 0, evaluations: 0, jacobians: 0, factorisations: 0, solves: 0 };
}
