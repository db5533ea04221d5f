import { describe, expect, it } from 'vitest';
import { noWork } from '../../../../packages/core/src/solve/contract.js';
import { rosenbrock } from '../../../../packages/core/src/solve/rosenbrock.js';
import { ShortStretch } from '../../../../packages/core/src/solve/short-stretch.js';
import { stoichiometryProduct } from '../../../../packages/core/src/solve/sparse-rows.js';
import { plainSystem } from '../../../support/plain-system.js';

/** Decay towards a moving value: y' = -k (y - cos t), whose course from y(0) = 0 is known. */
const decay = (k: number) =>
  plainSystem({
    states: 1,
    f: (t, y) => [-k * (y[0] - Math.cos(t))],
    jacobian: () => [[-k]],
    byTime: (t) => [-k * Math.sin(t)],
  });
const course = (k: number, t: number): number =>
  (k * (k * Math.cos(t) + Math.sin(t) - k * Math.exp(-k * t))) / (1 + k * k);
const tolerance = (relative: number) => ({ relative, absolute: Float64Array.of(relative) });

function open(k: number, relative: number) {
  const system = decay(k);
  const work = noWork();
  const moves = stoichiometryProduct(system.stoichiometry, system.states);
  return { work, short: new ShortStretch(system, tolerance(relative), work, moves) };
}

describe('a stretch far shorter than a step', () => {
  it('is passed at order 3: its error falls by sixteen as it is halved', () => {
    const off = [0.1, 0.05, 0.025].map((h) => {
      const { short } = open(2, 0.1);
      const y = Float64Array.of(0);
      expect(short.pass(0, h, y, new Float64Array(1))).toBe(true);
      return Math.abs(y[0] - course(2, h));
    });
    expect(off[0] / off[1]).toBeGreaterThan(14);
    expect(off[1] / off[2]).toBeGreaterThan(14);
    expect(off[1] / off[2]).toBeLessThan(18);
  });

  it('moves states and extents by the same sums, and counts itself and its rates', () => {
    const { short, work } = open(2, 0.1);
    const y = Float64Array.of(0.25);
    const x = Float64Array.of(7);
    expect(short.pass(1, 1.02, y, x)).toBe(true);
    expect(y[0] - 0.25).toBeCloseTo(x[0] - 7, 14);
    expect(work).toMatchObject({ steps: 0, passed: 1, evaluations: 3, jacobians: 0, solves: 0 });
  });

  it('tells what lies within it at order 2, and ends at the same value', () => {
    const told = (h: number): { middle: number; end: number } => {
      const { short } = open(2, 0.1);
      const y = Float64Array.of(0);
      let middle = Number.NaN;
      const take = (time: number, at: Float64Array, gained: Float64Array): void => {
        expect(time).toBe(0.4 * h);
        expect(gained[0] - 7).toBeCloseTo(at[0], 14);
        middle = at[0];
      };
      expect(short.pass(0, h, y, Float64Array.of(7), { times: [0.4 * h], take })).toBe(true);
      return { middle: Math.abs(middle - course(2, 0.4 * h)), end: y[0] };
    };
    const [long, half, quarter] = [0.1, 0.05, 0.025].map(told);
    expect(long.middle / half.middle).toBeGreaterThan(7);
    expect(half.middle / quarter.middle).toBeGreaterThan(7);
    const y = Float64Array.of(0);
    open(2, 0.1).short.pass(0, 0.1, y, new Float64Array(1));
    expect(y[0]).toBe(long.end);
  });

  it('leaves everything as it was where its error is not far below the tolerance, or is not a number', () => {
    for (const [k, relative] of [
      [2, 1e-9],
      [1e4, 1e-3],
      [Number.NaN, 0.1],
    ] as const) {
      const { short, work } = open(k, relative);
      const y = Float64Array.of(0.25);
      const x = Float64Array.of(7);
      expect(short.pass(1, 1.02, y, x)).toBe(false);
      expect([y[0], x[0]]).toEqual([0.25, 7]);
      expect(work.passed).toBe(0);
    }
  });
});

describe('the stiff integrator between marks that lie close together', () => {
  /** To day 1, with a mark every so many days around noon. */
  const run = (marks: number, gap: number, sampled = false) => {
    const integrator = rosenbrock(decay(20), tolerance(1e-6));
    const y = Float64Array.of(0);
    const x = new Float64Array(1);
    const times = [0, ...Array.from({ length: marks }, (_, i) => 0.5 + i * gap), 1];
    for (const [i, to] of times.slice(1).entries()) {
      const middle = (times[i] + to) / 2;
      integrator.advance(times[i], to, y, x, { times: sampled ? [middle] : [], take: () => undefined });
    }
    return { y: y[0], work: integrator.work, natural: integrator.memory?.natural };
  };

  it('passes them, and goes on with the step that it had', () => {
    const [two, ten] = [run(2, 9e-4), run(10, 1e-4)];
    expect(two.work.passed).toBe(1);
    expect(ten.work.passed).toBe(9);
    expect(ten.work.steps).toBe(two.work.steps);
    for (const { y } of [two, ten]) expect(Math.abs(y - course(20, 1))).toBeLessThan(1e-6);
  });

  it('passes them alike whatever is told of what lies between', () => {
    const [asked, unasked] = [run(10, 1e-4, true), run(10, 1e-4)];
    expect(asked.work).toEqual(unasked.work);
    expect(asked.y).toBe(unasked.y);
  });

  it('takes steps as long as it knows none', () => {
    const integrator = rosenbrock(decay(20), tolerance(1e-6));
    integrator.advance(0, 1e-9, Float64Array.of(0), new Float64Array(1));
    expect(integrator.work).toMatchObject({ steps: 1, passed: 0 });
  });
});
