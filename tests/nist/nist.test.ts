import { inverse, type Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { differences } from '../../packages/core/src/fit/differences.js';
import { minimise, type Problem } from '../../packages/core/src/fit/minimise.js';
import { certified, type Certified } from './problems.js';

function problemOf({ model, x, y, values }: Certified): Problem {
  const predict = (at: Float64Array): Float64Array | undefined => {
    const predicted = Float64Array.from(x, (each) => model(each, at));
    return predicted.every(Number.isFinite) ? predicted : undefined;
  };
  return {
    size: values.length,
    predict,
    loss: (i, predicted) => ({
      value: (predicted - y[i]) ** 2 / 2,
      slope: predicted - y[i],
      curvature: 1,
    }),
    jacobian: (at, predicted) =>
      differences(predict, at, predicted, (j) => 1e-5 * Math.max(Math.abs(at[j]), 1e-10), true),
    prior: false,
  };
}

describe.each(certified)('$name ($level level of difficulty)', (problem) => {
  it.each(problem.starts.map((start) => [start] as const))(
    'comes to the certified values from %j',
    (start) => {
      const minimum = minimise(problemOf(problem), Float64Array.from(start), { most: 5000 });
      expect(minimum.converged).toBe(true);
      expect(Math.abs((2 * minimum.value) / problem.squares - 1)).toBeLessThan(1e-8);
      problem.values.forEach((value, i) => {
        expect(Math.abs(minimum.at[i] / value - 1)).toBeLessThan(1e-6);
      });
      if (problem.deviations === undefined) return;
      const { jacobian } = minimum;
      const spread = problem.squares / (problem.x.length - problem.values.length);
      const covariance: Matrix = inverse(jacobian.transpose().mmul(jacobian)).mul(spread);
      problem.deviations.forEach((deviation, i) => {
        expect(Math.abs(Math.sqrt(covariance.get(i, i)) / deviation - 1)).toBeLessThan(1e-4);
      });
    },
  );

  // A miss stays a miss: several starts are what a fit has against it.
  const { missed } = problem;
  it.runIf(missed !== undefined)('misses from a far start, as told', () => {
    const minimum = minimise(problemOf(problem), Float64Array.from(missed?.start ?? []), { most: 1000 });
    expect(2 * minimum.value).toBeGreaterThan(2 * problem.squares);
  });
});
