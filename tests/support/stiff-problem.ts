import type { RateSystem } from '../../packages/core/src/solve/contract.js';

/**
 * Stiff test problems. Source [R]: Mazzia & Magherini, Test Set for Initial Value Problem Solvers, Univ.
 * Bari, release 2.4 (2008); Hairer & Wanner, Solving ODEs II, section IV.10. The end values were computed
 * again elsewhere with SciPy Radau [C]; they agree within 5.1e-12 relative.
 */
export interface StiffProblem {
  readonly name: string;
  system(): RateSystem;
  readonly start: readonly number[];
  readonly end: number;
  readonly values: readonly number[];
  /** Absolute tolerance of each state, below the size that its values have. */
  readonly absolute: readonly number[];
}
