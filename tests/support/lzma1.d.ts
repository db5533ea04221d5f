/** Packs bytes. What the package comes with of types is its source, which is not checked as strictly as ours. */
export declare function compress(bytes: Uint8Array, level: 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9): Uint8Array;
