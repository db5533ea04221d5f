import { describe, expect, it } from 'vitest';
import { oxygenSaturation } from '../../../../packages/core/src/chemistry/gases.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';

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
});
