import { describe, expect, it } from 'vitest';
import { checkTolerance, errorNorm, worstState } from '../../../../packages/core/src/solve/step-control.js';

const tolerance = { relative: 0.1, absolute: Float64Array.from([1, 2]) };

describe('errorNorm', () => {
  it('is the root mean square of errors over their allowance, by the larger of both ends', () => {
    const y = Float64Array.from([10, -20]);
    const next = Float64Array.from([-30, 10]);
    const error = Float64Array.from([4, -8]);
    expect(errorNorm(error, y, next, tolerance)).toBeCloseTo(Math.sqrt((1 + 4) / 2), 14);
  });

  it('is 0 without states and not a number when an error is not', () => {
    const none = new Float64Array(0);
    expect(errorNorm(none, none, none, { relative: 1, absolute: none })).toBe(0);
    const two = new Float64Array(2);
    expect(errorNorm(Float64Array.from([NaN, 0]), two, two, tolerance)).toBeNaN();
  });
});

describe('worstState', () => {
  it('names the largest by its allowance, or the first that is not finite', () => {
    const y = Float64Array.from([0, 0]);
    expect(worstState(Float64Array.from([-3, 4]), y, tolerance)).toBe(0);
    expect(worstState(Float64Array.from([1, Infinity]), y, tolerance)).toBe(1);
    expect(worstState(new Float64Array(0), new Float64Array(0), tolerance)).toBe(-1);
  });

  it('weighs each by its own tolerance and value, and names one also where all are far below', () => {
    // 0.3 / (1 + 0.1 x 10) = 0.15, 0.5 / (2 + 0.1 x 10) = 0.167; with the other's tolerance it would be turned round.
    expect(worstState(Float64Array.from([0.3, -0.5]), Float64Array.from([10, 10]), tolerance)).toBe(1);
    // 3 / (1 + 0.1 x 0) = 3, 8 / (2 + 0.1 x 20) = 2.
    expect(worstState(Float64Array.from([3, 8]), Float64Array.from([0, -20]), tolerance)).toBe(0);
    expect(worstState(Float64Array.from([0, 0]), Float64Array.from([0, 0]), tolerance)).toBe(0);
  });
});

describe('checkTolerance', () => {
  it.each([
    [0, [1, 1]],
    [-1, [1, 1]],
    [NaN, [1, 1]],
    [Infinity, [1, 1]],
    [1e-3, [1, 0]],
    [1e-3, [1, NaN]],
    [1e-3, [1]],
  ])('refuses relative %d with absolute %j', (relative, absolute) => {
    expect(() => checkTolerance({ relative, absolute: Float64Array.from(absolute) }, 2)).toThrow(RangeError);
  });

  it('takes what is above 0', () => {
    expect(() => checkTolerance(tolerance, 2)).not.toThrow();
  });
});
