import { expect, it } from 'vitest';
import { createRandom, nextRandom, normalOf, seedRandom } from '../../../../packages/core/src/base/random.js';

const take = (seed: number, count: number): number[] => {
  const random = createRandom(seed);
  return Array.from({ length: count }, random);
};

it('repeats itself for a seed and differs between seeds', () => {
  expect(take(42, 5)).toEqual(take(42, 5));
  expect(take(42, 5)).not.toEqual(take(43, 5));
  expect(take(2 ** 32, 5)).not.toEqual(take(0, 5));
});

it('goes on from a copy of where it stands to the same numbers', () => {
  const state = seedRandom(42);
  const begun = [nextRandom(state), nextRandom(state)];
  const copy = structuredClone(state);
  const rest = [nextRandom(state), nextRandom(state)];
  expect([nextRandom(copy), nextRandom(copy)]).toEqual(rest);
  expect([...begun, ...rest]).toEqual(take(42, 4));
});

it('is spread evenly over [0, 1)', () => {
  const numbers = take(1, 20_000);
  expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...numbers)).toBeLessThan(1);
  const counts = new Array<number>(20).fill(0);
  for (const number of numbers) counts[Math.floor(number * 20)] += 1;
  const chiSquared = counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  // 19 degrees of freedom: 99.9 % of fair streams stay below 43.8.
  expect(chiSquared).toBeLessThan(43.8);
});

it.each([-1, 0.5, NaN, 2 ** 53])('refuses the seed %d', (seed) => {
  expect(() => createRandom(seed)).toThrow(RangeError);
});

it('makes normal numbers of them by the polar method', () => {
  // Marsaglia & Bray 1964: of x = 0.5, y = 0 it is 0.5 sqrt(-2 ln(0.25) / 0.25); what lies outside the circle is thrown away.
  const given = [1 - 2 ** -53, 0, 0.75, 0.5];
  expect(normalOf(() => given.shift() ?? Number.NaN)).toBeCloseTo(0.5 * Math.sqrt(8 * Math.log(4)), 12);
  expect(given).toEqual([]);
  const random = createRandom(3);
  const numbers = Array.from({ length: 20_000 }, () => normalOf(random));
  // Within 4 standard errors of the mean, the variance and the share within one deviation (0.6827) of a normal number.
  const mean = numbers.reduce((sum, one) => sum + one, 0) / 20_000;
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(20_000));
  const variance = numbers.reduce((sum, one) => sum + one * one, 0) / 20_000;
  expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / 20_000));
  const within = numbers.filter((one) => Math.abs(one) < 1).length / 20_000;
  expect(Math.abs(within - 0.6827)).toBeLessThan(4 * Math.sqrt((0.6827 * 0.3173) / 20_000));
});
