import { describe, expect, it } from 'vitest';
import { denseLu } from '../../support/dense-lu.js';
import { rosenbrockWith } from '../../../packages/core/src/solve/rosenbrock.js';
import { sparseLu } from '../../../packages/core/src/solve/sparse-lu.js';
import type { LinearSolverFactory } from '../../../packages/core/src/solve/contract.js';
import type { WorkCounts } from '../../../packages/core/src/solve/contract.js';
import { relativeDeviation } from '../../support/deviation.js';
import { hires } from '../../support/hires-problem.js';
import { orego, vdpol } from '../../support/oscillator-problems.js';
import { pollu } from '../../support/pollution-problem.js';
import { rober, roberTable } from '../../support/rober-problem.js';
import type { StiffProblem } from '../../support/stiff-problem.js';

function solve(
  problem: StiffProblem,
  relative: number,
  makeSolver: LinearSolverFactory,
): { deviation: number; work: WorkCounts } {
  const system = problem.system();
  const absolute = Float64Array.from(problem.absolute);
  const integrator = rosenbrockWith(makeSolver)(system, { relative, absolute });
  const y = Float64Array.from(problem.start);
  const ending = integrator.advance(0, problem.end, y, new Float64Array(system.rates));
  expect(ending).toEqual({ kind: 'done' });
  return { deviation: relativeDeviation(y, problem.values), work: integrator.work };
}

/**
 * Bounds, about twice what was measured: largest relative deviation of any state at the end, and
 * evaluations.
 */
const bounds = [
  { problem: rober, relative: 1e-4, deviation: 2e-5, evaluations: 2_000 },
  { problem: rober, relative: 1e-7, deviation: 2e-8, evaluations: 8_000 },
  { problem: rober, relative: 1e-10, deviation: 3e-11, evaluations: 100_000 },
  { problem: hires, relative: 1e-4, deviation: 2e-5, evaluations: 1_200 },
  { problem: hires, relative: 1e-7, deviation: 3e-9, evaluations: 9_000 },
  { problem: hires, relative: 1e-10, deviation: 5e-12, evaluations: 60_000 },
  { problem: vdpol, relative: 1e-4, deviation: 2e-5, evaluations: 3_500 },
  { problem: vdpol, relative: 1e-7, deviation: 2e-8, evaluations: 20_000 },
  { problem: vdpol, relative: 1e-10, deviation: 1e-10, evaluations: 300_000 },
  { problem: orego, relative: 1e-4, deviation: 5e-4, evaluations: 4_000 },
  { problem: orego, relative: 1e-7, deviation: 5e-7, evaluations: 30_000 },
  { problem: orego, relative: 1e-10, deviation: 3e-10, evaluations: 300_000 },
  { problem: pollu, relative: 1e-4, deviation: 1e-5, evaluations: 1_000 },
  { problem: pollu, relative: 1e-7, deviation: 2e-8, evaluations: 5_000 },
  { problem: pollu, relative: 1e-10, deviation: 2e-11, evaluations: 50_000 },
] as const;

describe.each([
  ['sparse', sparseLu],
  ['dense', denseLu],
] as const)('rosenbrock with %s LU on the test set', (_name, makeSolver) => {
  it.each(bounds.map((bound) => [bound.problem.name, bound.relative, bound] as const))(
    '%s at tolerance %d',
    (_problem, relative, { problem, deviation, evaluations }) => {
      const run = solve(problem, relative, makeSolver);
      expect(run.deviation).toBeLessThan(deviation);
      expect(run.work.evaluations).toBeLessThan(evaluations);
      expect(run.work.rejected).toBeLessThan(0.1 * run.work.steps);
    },
  );
});

describe('ROBER over eleven decades', () => {
  it('meets every row of the published table, its mass kept', () => {
    const system = rober.system();
    const integrator = rosenbrockWith(sparseLu)(system, {
      relative: 1e-9,
      absolute: Float64Array.from(rober.absolute),
    });
    const y = Float64Array.from(rober.start);
    const x = new Float64Array(3);
    let from = 0;
    for (const [to, ...wanted] of roberTable) {
      expect(integrator.advance(from, to, y, x)).toEqual({ kind: 'done' });
      from = to;
      expect(relativeDeviation(y, wanted)).toBeLessThan(5e-10);
      expect(Math.abs(y[0] + y[1] + y[2] - 1)).toBeLessThan(1e-13);
      expect(x[2]).toBeCloseTo(y[2], 12);
    }
  });
});
