/**
 * Mixes 32 bits: the integer finaliser of MurmurHash3 (A. Appleby, public domain).
 */
export declare function mix(bits: number): number;
/** A stream of its own for a name under a seed (0 to 2^53 - 1): FNV-1a of the name, mixed with both halves of the seed. */
export declare function keyOf(seed: number, name: string): number;
/** Uniform number in [0, 1) of 53 bits for a key and a counter (0 to 2^32 - 1), the same whenever it is asked for. */
export declare function uniformAt(key: number, counter: number): number;
/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). Written out here because the
 * browser's own is asynchronous and Node's is not in a browser.
 */
export declare function sha256(text: string): string;
//# sourceMappingURL=hashes.d.ts.map