import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runningMean } from '../../../../packages/core/src/result/judge.js';

describe('runningMean', () => {
  it('of a straight line is the line half a window ago, and nothing before a full window', () => {
    const times = [0, 1, 2, 3, 4];
    const means = Array.from(runningMean(times, [0, 10, 20, 30, 40], 2));
    expect(means.slice(0, 2).every(Number.isNaN)).toBe(true);
    expect(means.slice(2)).toEqual([10, 20, 30]);
  });

  it('cuts into a step where the window ends inside it', () => {
    // Over [1.5, 3] of the line 0 0 4 4: a triangle from 2 to 4 over half a day, then 4.
    const means = runningMean([0, 1, 2, 3], [0, 0, 4, 4], 1.5);
    expect(means[3]).toBeCloseTo((0.5 * 3 + 4) / 1.5, 12);
  });

  it('gives the values back for no window', () => {
    expect(Array.from(runningMean([0, 1], [3, 5], 0))).toEqual([3, 5]);
  });

  it('lies between the lowest and the highest value, and keeps a constant', () => {
    const series = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 3, maxLength: 30 });
    fc.assert(
      fc.property(series, fc.double({ min: 0.1, max: 5, noNaN: true }), (values, window) => {
        const times = values.map((_, i) => i * 0.7);
        for (const mean of runningMean(times, values, window).filter((each) => !Number.isNaN(each))) {
          expect(mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
          expect(mean).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        }
      }),
    );
  });
});
