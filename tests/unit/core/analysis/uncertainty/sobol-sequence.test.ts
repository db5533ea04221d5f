import { describe, expect, it } from 'vitest';
import {
  sobolDimensions,
  sobolSequence,
} from '../../../../../packages/core/src/analysis/uncertainty/sobol-sequence.js';

/** Dimension (from 0) and coordinate. */
const SCIPY: readonly (readonly [number, number])[] = [
  [0, 0.4140625],
  [1, 0.2578125],
  [2, 0.7734375],
  [9, 0.6953125],
  [49, 0.6640625],
  [159, 0.5234375],
  [399, 0.1484375],
  [799, 0.2421875],
];

const points = (dimensions: number, count: number): number[][] => {
  const at = sobolSequence(dimensions);
  return Array.from({ length: count }, (_, i) => Array.from(at(i), (each) => each / 2 ** 32));
};

describe('the Sobol sequence', () => {
  it('has the published first points (Joe and Kuo 2008, their sample output in three dimensions)', () => {
    expect(points(3, 10)).toEqual([
      [0, 0, 0],
      [0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25],
      [0.25, 0.75, 0.75],
      [0.375, 0.375, 0.625],
      [0.875, 0.875, 0.125],
      [0.625, 0.125, 0.875],
      [0.125, 0.625, 0.375],
      [0.1875, 0.3125, 0.9375],
      [0.6875, 0.8125, 0.4375],
    ]);
  });

  it('gives an independent implementation its points (scipy.stats.qmc.Sobol, no scrambling, point 100)', () => {
    const at = points(800, 101)[100];
    expect(SCIPY.map(([dimension]) => at[dimension])).toEqual(SCIPY.map(([, value]) => value));
  });

  it.each([1, 2, 7, 50, 400, sobolDimensions])(
    'fills every stratum of dimension %i with 256 points',
    (dimension) => {
      const strata = points(dimension, 256).map((point) => Math.floor(point[dimension - 1] * 256));
      expect(new Set(strata).size).toBe(256);
    },
  );

  it('refuses dimensions it has no numbers for', () => {
    expect(() => sobolSequence(sobolDimensions + 1)).toThrow(/1 to 800 dimensions; got 801/);
    expect(() => sobolSequence(0)).toThrow(RangeError);
  });
});
