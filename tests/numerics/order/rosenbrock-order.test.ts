import { describe, expect, it } from 'vitest';
import { denseLu } from '../../support/dense-lu.js';
import { RodasStep } from '../../../packages/core/src/solve/rodas-step.js';
import { rosenbrock } from '../../../packages/core/src/solve/rosenbrock.js';
import { sparseLu } from '../../../packages/core/src/solve/sparse-lu.js';
import { largestDeviation, observedOrders } from '../../support/deviation.js';
import { exactProblem, exactSolution } from '../../support/exact-problem.js';
import { noWork } from '../../../packages/core/src/solve/contract.js';

const END = 2;

interface FixedRun {
  /** Largest deviation at the ends of the steps. */
  readonly y: number;
  readonly x: number;
  /** Largest deviation inside the steps. */
  readonly denseY: number;
  readonly denseX: number;
}

function fixedSteps(count: number, makeSolver = sparseLu): FixedRun {
  const step = new RodasStep(exactProblem, noWork(), makeSolver);
  const h = END / count;
  const y = Float64Array.from([1, 0, 1]);
  const x = new Float64Array(3);
  const gain = new Float64Array(3);
  const inside = new Float64Array(3);
  const worst = { y: 0, x: 0, denseY: 0, denseX: 0 };
  for (let n = 0; n < count; n++) {
    expect(step.begin(n * h, y)).toBe(true);
    expect(step.attempt(h)).toBe('computed');
    for (const share of [0.25, 0.5, 0.75]) {
      const wanted = exactSolution((n + share) * h);
      step.solution(share, inside);
      worst.denseY = Math.max(worst.denseY, largestDeviation(inside, wanted.y));
      step.extents(share, gain);
      for (let k = 0; k < 3; k++) gain[k] += x[k];
      worst.denseX = Math.max(worst.denseX, largestDeviation(gain, wanted.x));
    }
    step.extents(1, gain);
    for (let k = 0; k < 3; k++) x[k] += gain[k];
    y.set(step.next);
    const wanted = exactSolution((n + 1) * h);
    worst.y = Math.max(worst.y, largestDeviation(y, wanted.y));
    worst.x = Math.max(worst.x, largestDeviation(x, wanted.x));
  }
  return worst;
}

describe('RODAS with fixed steps on a non-autonomous problem', () => {
  const runs = [16, 32, 64, 128].map((count) => fixedSteps(count));

  it.each(['y', 'x'] as const)('has order 4 in %s', (part) => {
    for (const order of observedOrders(runs.map((run) => run[part]))) {
      expect(order).toBeGreaterThan(3.8);
      expect(order).toBeLessThan(4.5);
    }
  });

  it.each(['denseY', 'denseX'] as const)('has dense output with errors as h^4 in %s', (part) => {
    for (const order of observedOrders(runs.map((run) => run[part]))) expect(order).toBeGreaterThan(3.6);
  });

  it('is the same with either linear solver', () => {
    expect(fixedSteps(16, denseLu).y).toBeCloseTo(runs[0].y, 13);
  });

  it('has an error estimate of order 4 in h', () => {
    const y = Float64Array.from([1, 0, 1]);
    const errors = [0.1, 0.05, 0.025, 0.0125].map((h) => {
      const step = new RodasStep(exactProblem, noWork(), sparseLu);
      step.begin(0.3, y);
      step.attempt(h);
      return largestDeviation(step.error, [0, 0, 0]);
    });
    for (const order of observedOrders(errors)) {
      expect(order).toBeGreaterThan(3.7);
      expect(order).toBeLessThan(4.5);
    }
  });
});

describe('rosenbrock with error control', () => {
  it('follows its tolerance in states, extents and samples', () => {
    for (const relative of [1e-4, 1e-6, 1e-8, 1e-10]) {
      const integrator = rosenbrock(exactProblem, { relative, absolute: new Float64Array(3).fill(relative) });
      const y = Float64Array.from([1, 0, 1]);
      const x = new Float64Array(3);
      const times = Array.from({ length: 40 }, (_, i) => ((i + 1) * END) / 41);
      let samples = 0;
      let inside = 0;
      const take = (t: number, ys: Float64Array, xs: Float64Array): void => {
        const wanted = exactSolution(t);
        samples++;
        inside = Math.max(inside, largestDeviation(ys, wanted.y), largestDeviation(xs, wanted.x));
      };
      expect(integrator.advance(0, END, y, x, { times, take })).toEqual({ kind: 'done' });
      expect(samples).toBe(40);
      const wanted = exactSolution(END);
      expect(largestDeviation(y, wanted.y)).toBeLessThan(2 * relative);
      expect(largestDeviation(x, wanted.x)).toBeLessThan(2 * relative);
      expect(inside).toBeLessThan(20 * relative);
    }
  });
});
