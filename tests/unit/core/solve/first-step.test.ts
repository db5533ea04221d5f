import { describe, expect, it } from 'vitest';
import { firstStep } from '../../../../packages/core/src/solve/step-control.js';

const tolerance = { relative: 1e-6, absolute: Float64Array.from([1e-9]) };
const step = (y: number, slope: number, bend: number, span: number): number =>
  firstStep(Float64Array.from([y]), Float64Array.from([slope]), Float64Array.from([bend]), tolerance, span);

/** The step where an error of 1 is allowed, so that the norms are the numbers themselves. */
const plain = (y: number, slope: number, bend: number, span = 100): number =>
  firstStep(
    Float64Array.from([y]),
    Float64Array.from([slope]),
    Float64Array.from([bend]),
    { relative: Number.MIN_VALUE, absolute: Float64Array.from([1]) },
    span,
  );

describe('firstStep', () => {
  it('scales with time: a process a thousand times as fast starts with a thousandth of the step', () => {
    expect(step(1, -1e3, 1e6, 1e9) / step(1, -1, 1, 1e9)).toBeCloseTo(1e-3, 12);
  });

  it('is the whole span at rest and for slow straight change', () => {
    expect(step(1, 0, 0, 5)).toBe(5);
    expect(step(1, 0.01, 0, 5)).toBe(5);
  });

  it('does not change a state by more than itself', () => {
    expect(step(1, -4, 0, 5)).toBeCloseTo(0.25, 12);
  });

  it('is finite where only the bend is not 0', () => {
    expect(step(1, 0, 1, 5)).toBeCloseTo(Math.sqrt(0.02 * 1.001e-6), 12);
  });
});

describe('firstStep against the recipe (Hairer, Norsett & Wanner I, II.4 [R])', () => {
  it.each([0.01, 0.16, 0.25, 4, 81])(
    'where slope and bend are alike it is (0.01 / max(d1, d2))^(1/4), the rule for order 4 with d1 = d2 = %d',
    (d) => {
      expect(plain(0, d, d)).toBeCloseTo((0.01 / d) ** (1 / 4), 12);
    },
  );

  it.each([
    // 0.01 = |y'| tau (h/tau)^4 by hand, tau = |y'| / |y''|.
    ['tau = 4: h = 4 (0.01/8)^(1/4)', 2, 0.5, 0.752120618617],
    ['tau = 2: h = 2 (0.01/1)^(1/4)', 0.5, 0.25, 0.632455532034],
    ['tau = 1/8: h = 1/8 (0.01/0.0625)^(1/4)', -0.5, 4, 0.0790569415042],
  ])('%s', (_case, slope, bend, wanted) => {
    expect(plain(0, slope, bend)).toBeCloseTo(wanted, 10);
  });

  it.each([
    ['y is at the tolerance: not bounded by its size', 1, 2, 0, 5],
    ['y is below the tolerance: not bounded by its size', 0.5, 2, 0, 5],
    ['y is a little above it: 1.5 / 3', 1.5, 3, 0, 0.5],
    ['a slow slope bounds too: 2 / 0.5', 2, 0.5, 0, 4],
    ['a bend without slope: sqrt(2 x 0.01 / 0.5), bounded by nothing', 3, 0, 0.5, 0.2],
  ])('%s', (_case, y, slope, bend, wanted) => {
    expect(plain(y, slope, bend, 5)).toBeCloseTo(wanted, 12);
  });

  it('is never longer than the span', () => {
    expect(plain(0, 2, 0.5, 0.1)).toBe(0.1);
  });
});
