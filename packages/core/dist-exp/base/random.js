function step(state) {
    const { a, b, c, counter } = state;
    const out = (a + b + counter) >>> 0;
    state.counter = (counter + 1) >>> 0;
    state.a = b ^ (b >>> 9);
    state.b = (c + (c << 3)) >>> 0;
    state.c = (((c << 21) | (c >>> 11)) + out) >>> 0;
    return out;
}
/** The beginning of the stream of a seed. Throws RangeError unless it is a whole number from 0 to 2^53 - 1. */
export function seedRandom(seed) {
    if (!Number.isSafeInteger(seed) || seed < 0) {
        throw new RangeError(`seed must be a whole number from 0 to 2^53 - 1; got ${seed}`);
    }
    const state = { a: 0, b: seed >>> 0, c: Math.floor(seed / 2 ** 32) >>> 0, counter: 1 };
    for (let i = 0; i < 12; i++)
        step(state);
    return state;
}
/** The next number of a stream, in [0, 1). */
export function nextRandom(state) {
    return ((step(state) >>> 5) * 2 ** 26 + (step(state) >>> 6)) / 2 ** 53;
}
/**
 * A seeded stream of uniform numbers in [0, 1), the same on every machine: the sfc32 generator of
 * C. Doty-Humphrey (PractRand), seeded as published with the two halves of the seed and twelve steps
 * thrown away. Each number takes 53 bits from two steps.
 *
 * Throws RangeError unless `seed` is a whole number from 0 to 2^53 - 1.
 */
export function createRandom(seed) {
    const state = seedRandom(seed);
    return () => nextRandom(state);
}
//# sourceMappingURL=random.js.map