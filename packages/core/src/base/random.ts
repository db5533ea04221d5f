/**
 * A seeded stream of uniform numbers in [0, 1), the same on every machine: the sfc32 generator of
 * C. Doty-Humphrey (PractRand), seeded as published with the two halves of the seed and twelve steps
 * thrown away. Each number takes 53 bits from two steps.
 *
 * Throws RangeError unless `seed` is a whole number from 0 to 2^53 - 1.
 */
export function createRandom(seed: number): () => number {
  if (!Number.isSafeInteger(seed) || seed < 0) {
    throw new RangeError(`seed must be a whole number from 0 to 2^53 - 1; got ${seed}`);
  }
  let a = 0;
  let b = seed >>> 0;
  let c = Math.floor(seed / 2 ** 32) >>> 0;
  let counter = 1;
  const step = (): number => {
    const out = (a + b + counter) >>> 0;
    counter = (counter + 1) >>> 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) >>> 0;
    c = (((c << 21) | (c >>> 11)) + out) >>> 0;
    return out;
  };
  for (let i = 0; i < 12; i++) step();
  return () => ((step() >>> 5) * 2 ** 26 + (step() >>> 6)) / 2 ** 53;
}
