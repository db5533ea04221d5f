import type { RateSystem } from '../../packages/core/src/solve/contract.js';
import { sparseRows } from './plain-system.js';

/**
 * A smooth, nonlinear, non-autonomous system with a closed solution:
 * y0' = -y0² cos t, y0 = 1/(1 + sin t); y1 gathers what y0 loses; y2' = -y2 sin t, y2 = exp(cos t - 1).
 * The third rate, 2 y0³ cos t, moves nothing: its extent is 1 - y0².
 */
export const exactProblem: RateSystem = {
  states: 3,
  rates: 3,
  stoichiometry: sparseRows([
    [
      [0, -1],
      [1, 1],
    ],
    [[2, -1]],
    [],
  ]),
  dependence: sparseRows([[[0, 1]], [[2, 1]], [[0, 1]]]),
  evaluate(t, y, r) {
    r[0] = y[0] * y[0] * Math.cos(t);
    r[1] = y[2] * Math.sin(t);
    r[2] = 2 * y[0] ** 3 * Math.cos(t);
  },
  differentiate(t, y, dr, rt) {
    dr[0] = 2 * y[0] * Math.cos(t);
    dr[1] = Math.sin(t);
    dr[2] = 6 * y[0] ** 2 * Math.cos(t);
    rt[0] = -y[0] * y[0] * Math.sin(t);
    rt[1] = y[2] * Math.cos(t);
    rt[2] = -2 * y[0] ** 3 * Math.sin(t);
  },
};

/** States and extents of `exactProblem` at t, from (1, 0, 1) and 0 at t = 0. */
export function exactSolution(t: number): { y: number[]; x: number[] } {
  const first = 1 / (1 + Math.sin(t));
  const third = Math.exp(Math.cos(t) - 1);
  return { y: [first, 1 - first, third], x: [1 - first, 1 - third, 1 - first * first] };
}
