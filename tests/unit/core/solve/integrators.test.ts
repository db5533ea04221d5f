import { describe, expect, it } from 'vitest';
import type { Integrator, RateSystem } from '../../../../packages/core/src/solve/contract.js';
import { type IntegratorName, integrators } from '../../../support/integrators.js';
import { largestDeviation } from '../../../support/deviation.js';
import { exactProblem, exactSolution } from '../../../support/exact-problem.js';
import { plainSystem } from '../../../support/plain-system.js';
import { randomNetwork } from '../../../support/random-network.js';
import { reactionNetwork } from '../../../support/reaction-network.js';

const names: readonly IntegratorName[] = ['rosenbrock', 'odex'];

function make(name: IntegratorName, system: RateSystem, relative = 1e-8, options = {}): Integrator {
  const absolute = new Float64Array(system.states).fill(relative * 1e-3);
  return integrators[name](system, { relative, absolute }, options);
}

/** One state with y' = f(t, y). */
const single = (f: (t: number, y: number) => number, byY: (y: number) => number): RateSystem =>
  plainSystem({ states: 1, f: (t, y) => [f(t, y[0])], jacobian: (_t, y) => [[byY(y[0])]] });

describe.each(names)('%s', (name) => {
  it('bears its name', () => expect(make(name, exactProblem).name).toBe(name));

  it('follows a chain A -> B -> C (Bateman)', () => {
    const [k1, k2] = [2, 0.3];
    const system = reactionNetwork(3, [
      {
        k: k1,
        from: [0],
        moves: [
          [0, -1],
          [1, 1],
        ],
      },
      {
        k: k2,
        from: [1],
        moves: [
          [1, -1],
          [2, 1],
        ],
      },
    ]);
    const y = Float64Array.from([1, 0, 0]);
    const x = new Float64Array(2);
    expect(make(name, system).advance(0, 3, y, x)).toEqual({ kind: 'done' });
    const a = Math.exp(-k1 * 3);
    const b = (k1 / (k2 - k1)) * (a - Math.exp(-k2 * 3));
    expect(largestDeviation(y, [a, b, 1 - a - b])).toBeLessThan(2e-8);
    expect(largestDeviation(x, [1 - a, 1 - a - b])).toBeLessThan(2e-8);
  });

  it('washes a stirred tank in to its steady state', () => {
    const [inflow, tau] = [4, 0.5];
    const system = reactionNetwork(1, [
      { k: inflow / tau, from: [], moves: [[0, 1]] },
      { k: 1 / tau, from: [0], moves: [[0, -1]] },
    ]);
    const y = Float64Array.from([1]);
    const x = new Float64Array(2);
    expect(make(name, system).advance(2, 3.25, y, x)).toEqual({ kind: 'done' });
    expect(y[0]).toBeCloseTo(inflow + (1 - inflow) * Math.exp(-1.25 / tau), 7);
    expect(x[0]).toBeCloseTo((inflow / tau) * 1.25, 10);
  });

  it('lands on the end of each segment and sums the extents over them', () => {
    const integrator = make(name, exactProblem);
    const y = Float64Array.from([1, 0, 1]);
    const x = new Float64Array(3);
    for (const [from, to] of [
      [0, 0.1],
      [0.1, 0.100001],
      [0.100001, 1.3],
      [1.3, 2],
    ] as const) {
      expect(integrator.advance(from, to, y, x)).toEqual({ kind: 'done' });
      const wanted = exactSolution(to);
      expect(largestDeviation(y, wanted.y)).toBeLessThan(2e-8);
      expect(largestDeviation(x, wanted.x)).toBeLessThan(2e-8);
    }
  });

  it('does nothing on an empty segment and refuses to go back', () => {
    const integrator = make(name, exactProblem);
    const y = Float64Array.from([1, 0, 1]);
    expect(integrator.advance(1, 1, y, new Float64Array(3))).toEqual({ kind: 'done' });
    expect([...y]).toEqual([1, 0, 1]);
    expect(() => integrator.advance(1, 0, y, new Float64Array(3))).toThrow(RangeError);
    expect(() => integrator.advance(0, NaN, y, new Float64Array(3))).toThrow(RangeError);
  });

  it('delivers the samples in order, once each, and the same end without them to tolerance', () => {
    const times = [0.01, 0.5, 0.50001, 1, 1.99];
    const seen: number[] = [];
    const y = Float64Array.from([1, 0, 1]);
    const x = new Float64Array(3);
    const take = (t: number, ys: Float64Array, xs: Float64Array): void => {
      seen.push(t);
      const wanted = exactSolution(t);
      expect(largestDeviation(ys, wanted.y)).toBeLessThan(2e-7);
      expect(largestDeviation(xs, wanted.x)).toBeLessThan(2e-7);
      ys.fill(NaN);
      xs.fill(NaN);
    };
    expect(make(name, exactProblem).advance(0, 2, y, x, { times, take })).toEqual({ kind: 'done' });
    expect(seen).toEqual(times);
    expect(largestDeviation(y, exactSolution(2).y)).toBeLessThan(2e-8);
  });

  it('keeps every linear invariant of a random network', () => {
    const { system, contents, start } = randomNetwork(20, 60, 11);
    const totals = (y: Float64Array): number[] =>
      contents.map((row) => row.reduce((sum, share, i) => sum + share * y[i], 0));
    const y = start.slice();
    const x = new Float64Array(system.rates);
    const before = totals(y);
    expect(make(name, system, 1e-6).advance(0, 0.5, y, x)).toEqual({ kind: 'done' });
    expect(largestDeviation(y, start)).toBeGreaterThan(0.1);
    totals(y).forEach((total, q) => expect(Math.abs(total / before[q] - 1)).toBeLessThan(1e-13));
  });

  it('moves the states by what the extents say', () => {
    const { system, start } = randomNetwork(20, 60, 11);
    const { stoichiometry: s } = system;
    const y = start.slice();
    const x = new Float64Array(system.rates);
    expect(make(name, system, 1e-6).advance(0, 0.5, y, x)).toEqual({ kind: 'done' });
    const rebuilt = start.slice();
    for (let k = 0; k < system.rates; k++) {
      for (let p = s.start[k]; p < s.start[k + 1]; p++) rebuilt[s.column[p]] += s.value[p] * x[k];
    }
    expect(largestDeviation(rebuilt, y)).toBeLessThan(1e-12);
  });

  it('ends by name, with time and state, where a rate stops being a number', () => {
    const system = single(
      (t, y) => (t > 0.5 ? NaN : -y),
      () => -1,
    );
    const y = Float64Array.from([1]);
    const ending = make(name, system).advance(0, 1, y, new Float64Array(1));
    expect(ending).toMatchObject({ kind: 'not-finite', worst: 0 });
    const { time } = ending as { time: number };
    expect(time).toBeGreaterThan(0.4);
    expect(time).toBeLessThanOrEqual(0.5);
    expect(y[0]).toBeCloseTo(Math.exp(-time), 7);
  });

  it('ends at once when there is no rate to begin with', () => {
    const y = Float64Array.from([1]);
    const ending = make(
      name,
      single(
        () => NaN,
        () => 0,
      ),
    ).advance(0, 1, y, new Float64Array(1));
    expect(ending).toEqual({ kind: 'not-finite', time: 0, worst: 0 });
    expect(y[0]).toBe(1);
  });

  it("does not pass a pole: y' = y² from 1 has one at 1", () => {
    const y = Float64Array.from([1]);
    const ending = make(
      name,
      single(
        (_t, v) => v * v,
        (v) => 2 * v,
      ),
    ).advance(0, 2, y, new Float64Array(1));
    expect(['step-too-small', 'not-finite', 'singular']).toContain(ending.kind);
    expect(ending).toMatchObject({ worst: 0 });
    expect((ending as { time: number }).time).toBeCloseTo(1, 6);
    expect(Number.isFinite(y[0])).toBe(true);
  });

  it('ends by name after too many steps, with what it has', () => {
    const y = Float64Array.from([1, 0, 1]);
    const integrator = make(name, exactProblem, 1e-10, { maxSteps: 5, firstStep: 1e-4 });
    const ending = integrator.advance(0, 200, y, new Float64Array(3));
    expect(ending.kind).toBe('too-many-steps');
    const { time } = ending as { time: number };
    expect(time).toBeLessThan(200);
    expect(largestDeviation(y, exactSolution(time).y)).toBeLessThan(1e-8);
  });

  it('refuses tolerances that are not above 0', () => {
    for (const [relative, absolute] of [
      [0, 1],
      [1e-6, 0],
      [NaN, 1],
    ] as const) {
      const tolerance = { relative, absolute: new Float64Array(3).fill(absolute) };
      expect(() => integrators[name](exactProblem, tolerance)).toThrow(RangeError);
    }
  });
});

describe('both integrators', () => {
  it('agree on a stiff network to tolerance', () => {
    const { system, start } = randomNetwork(20, 60, 11);
    const ends = names.map((name) => {
      const y = start.slice();
      const x = new Float64Array(system.rates);
      expect(make(name, system, 1e-9).advance(0, 0.5, y, x)).toEqual({ kind: 'done' });
      return { y, x };
    });
    expect(largestDeviation(ends[0].y, ends[1].y)).toBeLessThan(1e-7);
    expect(largestDeviation(ends[0].x, ends[1].x)).toBeLessThan(1e-6);
  });
});
