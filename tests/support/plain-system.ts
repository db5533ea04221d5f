import type { RateSystem, SparseRows } from '../../packages/core/src/solve/contract.js';

/** Rows of (column, value) pairs made into the compressed form. */
export function sparseRows(rows: readonly (readonly (readonly [number, number])[])[]): SparseRows {
  const start = new Int32Array(rows.length + 1);
  rows.forEach((row, i) => (start[i + 1] = start[i] + row.length));
  const pairs = rows.flat();
  return {
    start,
    column: Int32Array.from(pairs, ([column]) => column),
    value: Float64Array.from(pairs, ([, value]) => value),
  };
}

/** A right side y' = f(t, y) with its Jacobian as dense rows and, when it has one, ∂f/∂t. */
export interface PlainProblem {
  readonly states: number;
  f(t: number, y: Float64Array): number[];
  jacobian(t: number, y: Float64Array): number[][];
  byTime?(t: number, y: Float64Array): number[];
}

/** A rate system with one rate a state, S = I and full dependence: the extents gain what the states gain. */
export function plainSystem(problem: PlainProblem): RateSystem {
  const { states } = problem;
  const all = Array.from({ length: states }, (_, i) => i);
  return {
    states,
    rates: states,
    stoichiometry: sparseRows(all.map((i) => [[i, 1]])),
    dependence: sparseRows(all.map(() => all.map((j) => [j, 1] as const))),
    evaluate(t, y, r) {
      r.set(problem.f(t, y));
    },
    differentiate(t, y, dr, rt) {
      dr.set(problem.jacobian(t, y).flat());
      rt.set(problem.byTime?.(t, y) ?? all.map(() => 0));
    },
  };
}
