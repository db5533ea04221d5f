import { describe, expect, it } from 'vitest';
import { bandsAt } from '../../../../packages/core/src/calibration/forecast.js';

const kit = (deviation: number) => ({ deviation: () => deviation, outlierShare: 0, outlierSpread: 1 });

describe('the bands of draws, of a forecast and of the backtest that judges it', () => {
  it('are quantiles with straight lines between neighbours, in whatever order the draws came', () => {
    const { truth, reading } = bandsAt([3, 1, 5, 2, 4], kit(0), () => 0.3);
    for (const lines of [truth, reading]) {
      expect(lines).toHaveLength(5);
      [1.2, 2, 3, 4, 4.8].forEach((line, i) => expect(lines[i]).toBeCloseTo(line, 12));
    }
  });

  it('take one error of the kit for each draw', () => {
    let drawn = 0;
    const { truth, reading } = bandsAt([7, 7, 7], kit(2), () => [0.1, 0.5, 0.9][drawn++]);
    expect(drawn).toBe(3);
    expect(truth).toEqual([7, 7, 7, 7, 7]);
    // The 10 % and 90 % points of the standard normal are 1.2816 from its middle.
    expect(reading[2]).toBe(7);
    expect(reading[1]).toBeCloseTo(7 - 1.2815515655446004, 12);
    expect(reading[4]).toBeCloseTo(7 + 0.9 * 2 * 1.2815515655446004, 12);
  });
});
