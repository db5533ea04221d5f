import { log } from './elementary.js';

/** Where a stream of random numbers stands: words of 32 bits `a`, `b`, `c` and a `counter`. Plain data; a copy goes on to the same numbers. */
export interface RandomState {
  a: number;
  b: number;
  c: number;
  counter: number;
}

function step(state: RandomState): number {
  const { a, b, c, counter } = state;
  const out = (a + b + counter) >>> 0;
  state.counter = (counter + 1) >>> 0;
  state.a = b ^ (b >>> 9);
  state.b = (c + (c << 3)) >>> 0;
  state.c = (((c << 21) | (c >>> 11)) + out) >>> 0;
  return out;
}

/** The beginning of the stream of a seed. Throws RangeError unless it is a whole number from 0 to 2^53 - 1. */
export function seedRandom(seed: number): RandomState {
  if (!Number.isSafeInteger(seed) || seed < 0) {
    throw new RangeError(`seed must be a whole number from 0 to 2^53 - 1; got ${seed}`);
  }
  const state = { a: 0, b: seed >>> 0, c: Math.floor(seed / 2 ** 32) >>> 0, counter: 1 };
  for (let i = 0; i < 12; i++) step(state);
  return state;
}

/** The next number of a stream, in [0, 1). */
export function nextRandom(state: RandomState): number {
  return ((step(state) >>> 5) * 2 ** 26 + (step(state) >>> 6)) / 2 ** 53;
}

/** A standard normal number of uniform ones in [0, 1): one of the two that the polar method gives (Marsaglia & Bray 1964). */
export function normalOf(random: () => number): number {
  for (;;) {
    const x = 2 * random() - 1;
    const y = 2 * random() - 1;
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * log(square)) / square);
  }
}

/**
 * A seeded stream of uniform numbers in [0, 1), the same on every machine: the sfc32 generator of
 * C. Doty-Humphrey (PractRand), seeded as published with the two halves of the seed and twelve steps
 * thrown away. Each number takes 53 bits from two steps.
 *
 * Throws RangeError unless `seed` is a whole number from 0 to 2^53 - 1.
 */
export function createRandom(seed: number): () => number {
  const state = seedRandom(seed);
  return () => nextRandom(state);
}
