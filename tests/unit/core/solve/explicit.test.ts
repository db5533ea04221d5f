import { describe, expect, it } from 'vitest';
import type { Integrator, RateSystem } from '../../../../packages/core/src/solve/contract.js';
import { explicit } from '../../../../packages/core/src/solve/explicit.js';
import { exactProblem } from '../../../support/exact-problem.js';
import { plainSystem, sparseRows } from '../../../support/plain-system.js';

const tolerance = (states: number): { relative: number; absolute: Float64Array } => ({
  relative: 1e-7,
  absolute: new Float64Array(states).fill(1e-10),
});

describe('explicit', () => {
  it('counts its evaluations and steps, and no work that it does not do', () => {
    let calls = 0;
    const system: RateSystem = {
      ...exactProblem,
      evaluate: (t, y, r) => {
        calls++;
        exactProblem.evaluate(t, y, r);
      },
    };
    const integrator = explicit(system, tolerance(3));
    const y = Float64Array.from([1, 0, 1]);
    expect(integrator.advance(0, 2, y, new Float64Array(3))).toEqual({ kind: 'done' });
    const { work } = integrator;
    expect(work.evaluations).toBe(calls);
    expect(work.steps).toBeGreaterThan(2);
    expect(work).toMatchObject({ jacobians: 0, factorisations: 0, solves: 0 });
  });

  it('steps back from where a trial leaves the domain of a rate', () => {
    const system = plainSystem({
      states: 1,
      f: (_t, y) => [-200 * (Math.sqrt(y[0]) - 0.1)],
      jacobian: (_t, y) => [[-100 / Math.sqrt(y[0])]],
    });
    const integrator = explicit(system, tolerance(1), { firstStep: 5 });
    const y = Float64Array.from([1]);
    expect(integrator.advance(0, 1, y, new Float64Array(1))).toEqual({ kind: 'done' });
    expect(integrator.work.rejected).toBeGreaterThan(0);
    expect(y[0]).toBeCloseTo(0.01, 6);
  });

  it('takes more than the 10,000 steps that odex allows by itself', () => {
    // A fast relaxation to cos t, which an explicit method must follow with short steps.
    const system = plainSystem({
      states: 1,
      f: (t, y) => [-2e4 * (y[0] - Math.cos(t))],
      jacobian: () => [[-2e4]],
      byTime: (t) => [-2e4 * Math.sin(t)],
    });
    const integrator = explicit(system, tolerance(1));
    const y = Float64Array.from([1]);
    expect(integrator.advance(0, 20, y, new Float64Array(1))).toEqual({ kind: 'done' });
    expect(integrator.work.steps).toBeGreaterThan(10_000);
    expect(y[0]).toBeCloseTo(Math.cos(20), 3);
  });

  it('lets an error of the rates through', () => {
    const system: RateSystem = {
      ...exactProblem,
      evaluate: () => {
        throw new TypeError('broken');
      },
    };
    const y = Float64Array.from([1, 0, 1]);
    expect(() => explicit(system, tolerance(3)).advance(0, 1, y, new Float64Array(3))).toThrow('broken');
  });

  it('names the fastest state when it makes no headway', () => {
    const integrator = explicit(exactProblem, tolerance(3), { maxSteps: 3 });
    const y = Float64Array.from([1, 0, 1]);
    const ending = integrator.advance(0, 100, y, new Float64Array(3));
    expect(ending).toMatchObject({ kind: 'too-many-steps' });
    expect([0, 1, 2]).toContain((ending as { worst: number }).worst);
  });

  it('goes on with the step it has found, and forgets it when told', () => {
    const restless = plainSystem({ states: 1, f: (t) => [Math.cos(5 * t)], jacobian: () => [[0]] });
    const evaluations = (between: (integrator: Integrator) => void): number => {
      const integrator = explicit(restless, tolerance(1), { firstStep: 1e-6 });
      const y = new Float64Array(1);
      expect(integrator.advance(0, 10, y, new Float64Array(1))).toEqual({ kind: 'done' });
      between(integrator);
      const before = integrator.work.evaluations;
      expect(integrator.advance(10, 11, y, new Float64Array(1))).toEqual({ kind: 'done' });
      return integrator.work.evaluations - before;
    };
    const forgetful = evaluations((integrator) => {
      integrator.restart();
    });
    expect(forgetful).toBeGreaterThan(1.5 * evaluations(() => undefined));
  });

  it.each([
    // Two rates that cancel on the first state: only their extents move.
    ['the most exacting state it moves', [[[0, 1]], [[0, -1]]]],
    ['any state where it moves none', [[]]],
  ] as const)('wants an extent as exactly as %s', (_what, rows) => {
    const none = rows.map(() => []);
    const system: RateSystem = {
      states: 2,
      rates: rows.length,
      stoichiometry: sparseRows(rows),
      dependence: sparseRows(none),
      evaluate: (t, _y, r) => {
        r.fill(Math.cos(t));
      },
      differentiate: (t, _y, _dr, rt) => {
        rt.fill(-Math.sin(t));
      },
    };
    // The second state asks for little.
    const wanted = { relative: 1e-12, absolute: Float64Array.from([1e-9, 1]) };
    const x = new Float64Array(rows.length);
    expect(explicit(system, wanted).advance(0, 4, Float64Array.from([0, 5]), x)).toEqual({ kind: 'done' });
    for (const extent of x) expect(Math.abs(extent - Math.sin(4))).toBeLessThan(1e-10);
  });
});
