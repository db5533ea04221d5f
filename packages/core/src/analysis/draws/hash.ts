/**
 * Mixes 32 bits: the integer finaliser of MurmurHash3 (A. Appleby, public domain).
 */
export function mix(bits: number): number {
  let h = bits >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** A stream of its own for a name under a seed (0 to 2^53 - 1): FNV-1a of the name, mixed with both halves of the seed. */
export function keyOf(seed: number, name: string): number {
  let h = 0x811c9dc5;
  for (const letter of name) h = Math.imul(h ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return mix(mix(mix(h) ^ (seed >>> 0)) + Math.floor(seed / 2 ** 32));
}

/** Uniform number in [0, 1) of 53 bits for a key and a counter (0 to 2^32 - 1), the same whenever it is asked for. */
export function uniformAt(key: number, counter: number): number {
  const high = mix(key ^ mix(counter + 0x9e3779b9));
  const low = mix(high ^ mix(counter ^ 0x7f4a7c15));
  return ((high >>> 5) * 2 ** 26 + (low >>> 6)) / 2 ** 53;
}
