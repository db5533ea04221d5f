import { expect, it } from 'vitest';
import { createRandom, nextRandom, seedRandom } from '../../../../packages/core/src/base/random.js';

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
