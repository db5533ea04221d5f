import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { daylightHours } from '../../../../packages/core/src/weather/radiation.js';
import { extraterrestrialRadiation } from '../../../../packages/core/src/weather/radiation.js';
import { sunPosition } from '../../../../packages/core/src/weather/radiation.js';

const values = createParameters();
const hours = (latitude: number, day: number): number => daylightHours(sunPosition(values, latitude, day));
const above = (latitude: number, day: number): number =>
  extraterrestrialRadiation(values, sunPosition(values, latitude, day));

describe('the sun', () => {
  it('is up for 12 hours at the equator on any day', () => {
    for (const day of [1, 80, 172, 355]) expect(hours(0, day)).toBeCloseTo(12, 12);
  });

  it('does not set or does not rise beyond the polar circles', () => {
    expect([hours(75, 172), hours(75, 355), hours(-75, 172)]).toEqual([24, 0, 0]);
    expect(above(75, 172)).toBeGreaterThan(40);
    expect(above(75, 355)).toBeCloseTo(0, 12);
    expect(hours(90, 172)).toBe(24);
  });

  it('gives two latitudes, north and south, 24 hours between them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        (latitude, day) => {
          expect(hours(latitude, day) + hours(-latitude, day)).toBeCloseTo(24, 9);
          expect(above(latitude, day)).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
    );
  });

  it('shines most in the middle of the year in the north, of the winter in the south', () => {
    expect(above(45, 172)).toBeGreaterThan(above(45, 355));
    expect(above(-45, 172)).toBeLessThan(above(-45, 355));
  });
});
