import { describe, expect, it } from 'vitest';
import { deviate95, normalCdf, normalQuantile } from '../../../../packages/core/src/base/normal.js';

/** How far a value is from what it should be, as a share of that. */
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('the share of normal draws below a deviate', () => {
  // By mpmath 1.3 (ncdf at 40 digits).
  it.each([
    [-37, 5.725571222524577e-300],
    [-20, 2.7536241186062337e-89],
    [-10, 7.619853024160525e-24],
    [-5, 2.866515718791939e-7],
    [-3, 0.0013498980316300946],
    [-1.96, 0.024997895148220435],
    [-0.5, 0.3085375387259869],
    [0.25, 0.5987063256829237],
    [1, 0.8413447460685429],
    [2.5, 0.9937903346742238],
    [6, 0.9999999990134123],
  ])('at %d is %d', (z, share) => {
    expect(off(normalCdf(z), share)).toBeLessThan(1e-15);
  });

  it('is a half in the middle, symmetric, and 0 and 1 far out', () => {
    expect(normalCdf(0)).toBe(0.5);
    for (const z of [0.3, 0.9, 2, 8]) expect(normalCdf(z) + normalCdf(-z)).toBe(1);
    expect([normalCdf(40), normalCdf(-40), normalCdf(Infinity), normalCdf(-Infinity)]).toEqual([1, 0, 1, 0]);
  });

  it.each([0.67448975, Math.sqrt(32)])(
    'has no step at %d, where one formula takes over from another',
    (z) => {
      const next = normalCdf(-z * (1 + 1e-15));
      expect(off(next, normalCdf(-z))).toBeLessThan(1e-13);
    },
  );
});

describe('the normal deviate of a share', () => {
  // By mpmath 1.3 (root of ncdf at 40 digits).
  it.each([
    [1e-300, -37.04709629936122],
    [1e-20, -9.262340089798407],
    [1e-9, -5.9978070150076865],
    [0.001, -3.0902323061678136],
    [0.01, -2.326347874040841],
    [0.025, -1.9599639845400543],
    [0.08, -1.4050715603096327],
    [0.3, -0.5244005127080408],
    [0.95, 1.6448536269514722],
    [0.999999, 4.753424308817087],
  ])('at %d is %d', (u, z) => {
    expect(off(normalQuantile(u), z)).toBeLessThan(1e-15);
  });

  it('is 0 at a half and infinite at the ends', () => {
    expect([normalQuantile(0.5), normalQuantile(0), normalQuantile(1)]).toEqual([0, -Infinity, Infinity]);
  });

  it('undoes the share', () => {
    for (const u of [1e-300, 1e-9, 1e-4, 0.05, 0.3, 0.5, 0.8, 0.999])
      expect(off(normalCdf(normalQuantile(u)), u)).toBeLessThan(1e-12);
  });

  it('spans 90 % from minus its 95 % point to it', () => {
    expect(off(deviate95, 1.6448536269514722)).toBeLessThan(1e-15);
  });
});
