import { describe, expect, it } from 'vitest';
import { explicit } from '../../../packages/core/src/solve/explicit.js';
import { largestDeviation } from '../../support/deviation.js';
import { exactProblem, exactSolution } from '../../support/exact-problem.js';

/** Error at t = 2 and the evaluations it took. */
function run(relative: number): { error: number; evaluations: number } {
  const integrator = explicit(exactProblem, { relative, absolute: new Float64Array(3).fill(relative) });
  const y = Float64Array.from([1, 0, 1]);
  const x = new Float64Array(3);
  expect(integrator.advance(0, 2, y, x)).toEqual({ kind: 'done' });
  const wanted = exactSolution(2);
  return {
    error: Math.max(largestDeviation(y, wanted.y), largestDeviation(x, wanted.x)),
    evaluations: integrator.work.evaluations,
  };
}

describe('explicit, whose order varies', () => {
  const runs = [1e-3, 1e-6, 1e-9, 1e-12].map((relative) => ({ relative, ...run(relative) }));

  it('follows its tolerance in states and extents', () => {
    for (const { error, relative } of runs) expect(error).toBeLessThan(5 * relative);
  });

  it('raises its order: a thousandth of the error costs less than thrice the work', () => {
    runs.slice(1).forEach(({ evaluations }, i) => {
      expect(evaluations).toBeLessThan(3 * runs[i].evaluations);
    });
  });

  it('has an observed order above 6 at tight tolerance', () => {
    const [, , loose, tight] = runs;
    const order = Math.log(loose.error / tight.error) / Math.log(tight.evaluations / loose.evaluations);
    expect(order).toBeGreaterThan(6);
  });
});
