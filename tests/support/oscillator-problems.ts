import { plainSystem } from './plain-system.js';
import type { StiffProblem } from './stiff-problem.js';

const EPS = 1e-6;

export const vdpol: StiffProblem = {
  name: 'VDPOL',
  system: () =>
    plainSystem({
      states: 2,
      f: (_t, y) => [y[1], ((1 - y[0] * y[0]) * y[1] - y[0]) / EPS],
      jacobian: (_t, y) => [
        [0, 1],
        [(-2 * y[0] * y[1] - 1) / EPS, (1 - y[0] * y[0]) / EPS],
      ],
    }),
  start: [2, 0],
  end: 2,
  values: [0.1706167732170483e1, -0.8928097010247975],
  absolute: [1e-11, 1e-11],
};

export const orego: StiffProblem = {
  name: 'OREGO',
  system: () =>
    plainSystem({
      states: 3,
      f: (_t, y) => [
        77.27 * (y[1] + y[0] * (1 - 8.375e-6 * y[0] - y[1])),
        (y[2] - (1 + y[0]) * y[1]) / 77.27,
        0.161 * (y[0] - y[2]),
      ],
      jacobian: (_t, y) => [
        [77.27 * (1 - 2 * 8.375e-6 * y[0] - y[1]), 77.27 * (1 - y[0]), 0],
        [-y[1] / 77.27, -(1 + y[0]) / 77.27, 1 / 77.27],
        [0.161, 0, -0.161],
      ],
    }),
  start: [1, 2, 3],
  end: 360,
  values: [0.1000814870318523e1, 0.1228178521549917e4, 0.1320554942846706e3],
  absolute: [1e-11, 1e-11, 1e-11],
};
