import { inverse, type Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { differences } from '../../../packages/core/src/calibration/search.js';
import { minimise, type Problem } from '../../../packages/core/src/calibration/search.js';
import { valueAt } from '../../../packages/core/src/calibration/free-parameter.js';
import { minimaFrom } from '../../../packages/core/src/calibration/search.js';
import { answered } from '../../../packages/core/src/calibration/wanted.js';
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
      differences({ predict }, at, predicted, (j) => 1e-5 * Math.max(Math.abs(at[j]), 1e-10), true),
    prior: false,
  };
}

describe.each(certified)('$name ($level level of difficulty)', (problem) => {
  it.each(problem.starts.map((start) => [start] as const))(
    'comes to the certified values from %j',
    (start) => {
      const minimum = answered(minimise(problemOf(problem), Float64Array.from(start), { most: 5000 }));
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
  if (missed === undefined) return;
  it(`misses from ${JSON.stringify(missed.start)}: ${missed.why}`, () => {
    const minimum = answered(minimise(problemOf(problem), Float64Array.from(missed.start), { most: 1000 }));
    expect(2 * minimum.value).toBeGreaterThan(2 * problem.squares);
  });
});

/** Values of the numbers at deviates. */
type Valued = (deviates: ArrayLike<number>) => number[];

/** As a fit in use has it: lognormal numbers about a value, 90 % within a factor of 100 of it, told by their deviates. */
function inDeviates({ model, x, y }: Certified, about: readonly number[]): Problem & { at: Valued } {
  const at: Valued = (deviates) =>
    about.map((value, j) =>
      valueAt({ value, low: value / 100, high: value * 100, distribution: 'lognormal' }, deviates[j]),
    );
  const predict = (deviates: Float64Array): Float64Array | undefined => {
    const values = at(deviates);
    const predicted = Float64Array.from(x, (each) => model(each, values));
    return predicted.every(Number.isFinite) ? predicted : undefined;
  };
  return {
    at,
    size: about.length,
    predict,
    loss: (i, predicted) => ({ value: (predicted - y[i]) ** 2 / 2, slope: predicted - y[i], curvature: 1 }),
    jacobian: (deviates, predicted) => differences({ predict }, deviates, predicted, () => 1e-6, true),
    prior: false,
  };
}

describe('starts that are missed, as middles of wide priors', () => {
  const missed = certified.filter((each) => each.missed !== undefined);
  const searched = (problem: Certified, further: number) => {
    const search = inDeviates(problem, problem.missed?.start ?? []);
    const minima = answered(minimaFrom(search, further, 1, { most: 1000 }));
    const best = minima.reduce((low, each) => (each.value < low.value ? each : low));
    return { ratio: (2 * best.value) / problem.squares, values: search.at(best.at) };
  };

  it.each(missed.map((each) => [each.name, each] as const))(
    '%s: four starts, as `--starts 4`, come to the certified values',
    (_, problem) => {
      const { ratio, values } = searched(problem, 3);
      expect(Math.abs(ratio - 1)).toBeLessThan(1e-8);
      problem.values.forEach((value, i) => {
        expect(Math.abs(values[i] / value - 1)).toBeLessThan(1e-5);
      });
    },
  );

  it('the two starts that a fit makes by itself find MGH10, and miss BoxBOD', () => {
    const ratios = Object.fromEntries(missed.map((each) => [each.name, searched(each, 1).ratio]));
    expect(ratios['MGH10']).toBeCloseTo(1, 8);
    expect(ratios['BoxBOD']).toBeGreaterThan(8);
  });
});
