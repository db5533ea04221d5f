import { describe, expect, it } from 'vitest';
import type { RateSystem } from '../../../../packages/core/src/solve/contract.js';
import { rosenbrock, rosenbrockWith } from '../../../../packages/core/src/solve/rosenbrock.js';
import { denseLu } from '../../../support/dense-lu.js';
import { noWork } from '../../../../packages/core/src/solve/contract.js';
import { RodasStep } from '../../../../packages/core/src/solve/rodas-step.js';
import { sparseLu } from '../../../../packages/core/src/solve/sparse-lu.js';
import { exactProblem } from '../../../support/exact-problem.js';
import { plainSystem } from '../../../support/plain-system.js';
import { hires } from '../../../support/hires-problem.js';

const tolerance = (relative: number, states: number): { relative: number; absolute: Float64Array } => ({
  relative,
  absolute: new Float64Array(states).fill(relative * 1e-3),
});

/** The system, with the arguments of each call kept. */
function watched(system: RateSystem): { system: RateSystem; rates: number[]; partials: number[] } {
  const rates: number[] = [];
  const partials: number[] = [];
  const spy: RateSystem = {
    ...system,
    evaluate: (t, y, r) => {
      rates.push(t);
      system.evaluate(t, y, r);
    },
    differentiate: (t, y, dr, rt) => {
      partials.push(t);
      system.differentiate(t, y, dr, rt);
    },
  };
  return { system: spy, rates, partials };
}

describe('rosenbrock', () => {
  it('counts its work as it does it; a refused step costs no rates at its beginning and no Jacobian', () => {
    const { system, rates, partials } = watched(hires.system());
    const integrator = rosenbrock(system, tolerance(1e-5, 8), { firstStep: 50 });
    const y = Float64Array.from(hires.start);
    expect(integrator.advance(0, 300, y, new Float64Array(system.rates))).toEqual({ kind: 'done' });
    const { work } = integrator;
    expect(work.rejected).toBeGreaterThan(0);
    expect(work.evaluations).toBe(rates.length);
    expect(work.jacobians).toBe(partials.length);
    expect(work.evaluations).toBe(6 * work.steps + 5 * work.rejected);
    expect(work.jacobians).toBe(work.steps);
    expect(work.factorisations).toBe(work.steps + work.rejected);
    expect(work.solves).toBe(6 * work.factorisations);
  });

  it('is deterministic: the same run gives the same bits', () => {
    const ends = [0, 1].map(() => {
      const system = hires.system();
      const y = Float64Array.from(hires.start);
      const x = new Float64Array(system.rates);
      rosenbrock(system, tolerance(1e-6, 8)).advance(0, 300, y, x);
      return [...y, ...x];
    });
    expect(ends[0]).toEqual(ends[1]);
  });

  it('keeps its natural step over short segments, and forgets it when told', () => {
    const system = plainSystem({ states: 1, f: () => [1], jacobian: () => [[0]] });
    const integrator = rosenbrock(system, tolerance(1e-6, 1), { firstStep: 1e-3 });
    const y = new Float64Array(1);
    const x = new Float64Array(1);
    integrator.advance(0, 10, y, x);
    integrator.advance(10, 10 + 1e-9, y, x);
    const before = integrator.work.steps;
    integrator.advance(11, 21, y, x);
    expect(integrator.work.steps - before).toBeLessThanOrEqual(2);
    integrator.restart();
    const restarted = integrator.work.steps;
    integrator.advance(21, 31, y, x);
    expect(integrator.work.steps - restarted).toBeGreaterThan(4);
  });

  it('spends about as much on a year of days as on a year', () => {
    const decay = plainSystem({
      states: 1,
      f: (t, y) => [Math.sin(t) - y[0]],
      jacobian: () => [[-1]],
      byTime: (t) => [Math.cos(t)],
    });
    const steps = [1, 365].map((segments) => {
      const integrator = rosenbrock(decay, tolerance(1e-5, 1));
      const y = Float64Array.from([-0.5]);
      for (let d = 0; d < segments; d++) {
        integrator.advance((365 * d) / segments, (365 * (d + 1)) / segments, y, new Float64Array(1));
      }
      expect(y[0]).toBeCloseTo((Math.sin(365) - Math.cos(365)) / 2, 4);
      return integrator.work.steps;
    });
    expect(steps[1]).toBeLessThan(1.6 * steps[0]);
  });

  it('ends as singular, naming the state, when no step gives a matrix that it can factorise', () => {
    const never = rosenbrockWith((pattern) => {
      const solver = sparseLu(pattern);
      return {
        entries: solver.entries,
        values: solver.values,
        failedRow: 1,
        place: (i, j) => solver.place(i, j),
        factor: () => false,
        solve: () => undefined,
      };
    });
    const y = Float64Array.from([1, 0, 1]);
    const ending = never(exactProblem, tolerance(1e-6, 3)).advance(0, 1, y, new Float64Array(3));
    expect(ending).toEqual({ kind: 'singular', time: 0, worst: 1 });
    expect([...y]).toEqual([1, 0, 1]);
  });

  it('recovers from a matrix that a smaller step mends', () => {
    const growth = plainSystem({ states: 1, f: (_t, y) => [4 * y[0]], jacobian: () => [[4]] });
    // 1/(hγ) = 4 at h = 1: the first matrix is zero.
    const integrator = rosenbrock(growth, tolerance(1e-8, 1), { firstStep: 1 });
    const y = Float64Array.from([1]);
    expect(integrator.advance(0, 2, y, new Float64Array(1))).toEqual({ kind: 'done' });
    expect(integrator.work.solves).toBeLessThan(6 * integrator.work.factorisations);
    expect(y[0] / Math.exp(8)).toBeCloseTo(1, 6);
  });

  it('refuses a Jacobian that is not finite, naming a state that the rate moves', () => {
    const system: RateSystem = {
      ...exactProblem,
      differentiate: (t, y, dr, rt) => {
        exactProblem.differentiate(t, y, dr, rt);
        dr[1] = Infinity;
      },
    };
    const y = Float64Array.from([1, 0, 1]);
    const ending = rosenbrock(system, tolerance(1e-6, 3)).advance(0, 1, y, new Float64Array(3));
    expect(ending).toEqual({ kind: 'not-finite', time: 0, worst: 2 });
  });

  it('steps back from where a trial leaves the domain of a rate', () => {
    // sqrt(y) with y falling to 0.01: a long trial step reaches negative y, where the rate is not a number.
    const system = plainSystem({
      states: 1,
      f: (_t, y) => [-200 * (Math.sqrt(y[0]) - 0.1)],
      jacobian: (_t, y) => [[-100 / Math.sqrt(y[0])]],
    });
    const integrator = rosenbrock(system, tolerance(1e-6, 1), { firstStep: 5 });
    const y = Float64Array.from([1]);
    expect(integrator.advance(0, 10, y, new Float64Array(1))).toEqual({ kind: 'done' });
    expect(integrator.work.rejected).toBeGreaterThan(0);
    expect(y[0]).toBeCloseTo(0.01, 6);
  });

  it('catches a rate that is not finite and moves nothing', () => {
    const system: RateSystem = {
      ...exactProblem,
      evaluate: (t, y, r) => {
        exactProblem.evaluate(t, y, r);
        if (t > 0.5) r[2] = NaN;
      },
    };
    const y = Float64Array.from([1, 0, 1]);
    const ending = rosenbrock(system, tolerance(1e-6, 3)).advance(0, 1, y, new Float64Array(3));
    expect(ending).toMatchObject({ kind: 'not-finite', worst: -1 });
  });

  it('takes a step whose error is exactly at the tolerance, and none above', () => {
    const decay = plainSystem({
      states: 1,
      f: (_t, y) => [-y[0] * y[0]],
      jacobian: (_t, y) => [[-2 * y[0]]],
    });
    const step = new RodasStep(decay, noWork(), denseLu);
    step.begin(0, Float64Array.from([1]));
    step.attempt(0.5);
    const error = Math.abs(step.error[0]);
    const tries = (allowed: number): { steps: number; rejected: number } => {
      const asked = { relative: Number.MIN_VALUE, absolute: Float64Array.from([allowed]) };
      const integrator = rosenbrock(decay, asked, { firstStep: 0.5, maxSteps: 1 });
      expect(integrator.advance(0, 5, Float64Array.from([1]), new Float64Array(1)).kind).toBe(
        'too-many-steps',
      );
      return integrator.work;
    };
    expect(tries(error)).toMatchObject({ steps: 1, rejected: 0 });
    for (const above of [1.001, 1.5, 3])
      expect(tries(error / above)).toMatchObject({ steps: 0, rejected: 1 });
  });

  it('delivers a sample at the very end of a step with that step', () => {
    const growth = plainSystem({ states: 1, f: (_t, y) => [y[0]], jacobian: () => [[1]] });
    const seen: number[] = [];
    const take = (t: number, y: Float64Array, x: Float64Array): void => {
      seen.push(t, y[0], x[0]);
    };
    const integrator = rosenbrock(growth, tolerance(1e-3, 1), { firstStep: 0.25, maxSteps: 1 });
    const y = Float64Array.from([1]);
    const sampling = { times: [0.25, 0.5], take };
    expect(integrator.advance(0, 1, y, new Float64Array(1), sampling)).toMatchObject({ time: 0.25 });
    expect(seen).toHaveLength(3);
    expect(seen[1]).toBeCloseTo(Math.exp(0.25), 4);
    expect(seen[2]).toBeCloseTo(Math.exp(0.25) - 1, 4);
  });

  it('runs to the last bit alike in another unit of time, however short or long that makes the segment', () => {
    const run = (unit: number): { bits: number[]; steps: number; rejected: number } => {
      const plain = hires.system();
      const system: RateSystem = {
        ...plain,
        evaluate: (t, y, r) => {
          plain.evaluate(t / unit, y, r);
          for (let k = 0; k < r.length; k++) r[k] /= unit;
        },
        differentiate: (t, y, dr, rt) => {
          plain.differentiate(t / unit, y, dr, rt);
          for (let p = 0; p < dr.length; p++) dr[p] /= unit;
          for (let k = 0; k < rt.length; k++) rt[k] /= unit * unit;
        },
      };
      const integrator = rosenbrock(system, tolerance(1e-4, 8), { firstStep: 256 * unit });
      const y = Float64Array.from(hires.start);
      expect(integrator.advance(0, 256 * unit, y, new Float64Array(system.rates))).toEqual({ kind: 'done' });
      const { steps, rejected } = integrator.work;
      return { bits: [...y], steps, rejected };
    };
    const wanted = run(1);
    expect(wanted.rejected).toBeGreaterThan(0);
    for (const power of [-110, 110]) expect(run(2 ** power)).toEqual(wanted);
  });
});
