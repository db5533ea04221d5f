import { describe, expect, it } from 'vitest';
import { firstStep } from '../../../packages/core/src/solve/first-step.js';

const tolerance = { relative: 1e-6, absolute: Float64Array.from([1e-9]) };
const step = (y: number, slope: number, bend: number, span: number): number =>
  firstStep(Float64Array.from([y]), Float64Array.from([slope]), Float64Array.from([bend]), tolerance, span);

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
