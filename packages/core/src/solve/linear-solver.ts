import type { SparsePattern } from './contract.js';

/** A square linear system whose places are known beforehand and whose values change. */
export interface LinearSolver {
  /** The values, at the indices that `place` gives. `factor` overwrites them. */
  readonly values: Float64Array;
  /** Row at which the last `factor` failed, or -1. */
  readonly failedRow: number;
  /** Index into `values` of the entry (row, column). Throws RangeError when the pattern lacks it. */
  place(row: number, column: number): number;
  /** Factorises. False when a pivot is zero, lost in round-off or not finite. */
  factor(): boolean;
  /** Replaces b by the solution, with the last factors. */
  solve(b: Float64Array): void;
}

/** Makes a solver for a square pattern (one row for each `start` but the last); it adds the diagonal. */
export type LinearSolverFactory = (pattern: SparsePattern) => LinearSolver;
