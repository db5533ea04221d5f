import { describe, expect, it } from 'vitest';
import { carriedShare, oxygenSaturation } from '../../../../packages/core/src/chemistry/gases.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { pressureShare } from '../../../../packages/core/src/weather/penman-monteith.js';

describe('oxygen saturation', () => {
  // Benson & Krause 1980/84, equation of APHA 4500-O [R]; values worked out [C], equal to printed tables [M].
  it.each([
    [0, 14.621],
    [5, 12.771],
    [10, 11.288],
    [15, 10.084],
    [20, 9.092],
    [25, 8.263],
    [30, 7.559],
    [35, 6.949],
  ])('at %d degC is %f g/m3', (temperature, wanted) => {
    expect(Math.abs(oxygenSaturation(createParameters(), temperature) - wanted)).toBeLessThan(6e-4);
  });

  it('at 20 degC falls with height as the equation of Benson & Krause says [C], by the pressure of FAO-56', () => {
    const values = createParameters();
    const wanted = [9.09, 8.77, 8.46, 8.15, 7.86, 7.57, 7.3];
    wanted.forEach((oxygen, step) => {
      const found = oxygenSaturation(values, 20, pressureShare(values, 300 * step));
      expect(Math.abs(found - oxygen)).toBeLessThan(0.01);
    });
  });

  it('at the sea is the same to the last digit whether the pressure is said or not', () => {
    const values = createParameters();
    for (const warmth of [4, 17.3, 31])
      expect(oxygenSaturation(values, warmth, pressureShare(values, 0))).toBe(
        oxygenSaturation(values, warmth),
      );
  });
});

describe('the share that air which fills up still carries', () => {
  it('is all of it at first, and what the air holds in the end (limits of (1 - e^-n)/n)', () => {
    expect(carriedShare(0)).toBe(1);
    expect(carriedShare(1)).toBeCloseTo(1 - Math.exp(-1), 15);
    expect(carriedShare(1e4) * 1e4).toBeCloseTo(1, 12);
  });

  it('has no step where the series takes over', () => {
    expect(carriedShare(0.999999e-6) - carriedShare(1.000001e-6)).toBeCloseTo(1e-12, 12);
  });
});
