/** Where a stream of random numbers stands: words of 32 bits `a`, `b`, `c` and a `counter`. Plain data; a copy goes on to the same numbers. */
export interface RandomState {
    a: number;
    b: number;
    c: number;
    counter: number;
}
/** The beginning of the stream of a seed. Throws RangeError unless it is a whole number from 0 to 2^53 - 1. */
export declare function seedRandom(seed: number): RandomState;
/** The next number of a stream, in [0, 1). */
export declare function nextRandom(state: RandomState): number;
/**
 * A seeded stream of uniform numbers in [0, 1), the same on every machine: the sfc32 generator of
 * C. Doty-Humphrey (PractRand), seeded as published with the two halves of the seed and twelve steps
 * thrown away. Each number takes 53 bits from two steps.
 *
 * Throws RangeError unless `seed` is a whole number from 0 to 2^53 - 1.
 */
export declare function createRandom(seed: number): () => number;
//# sourceMappingURL=random.d.ts.map