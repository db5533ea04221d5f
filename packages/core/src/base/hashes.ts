import { pow } from './elementary.js';

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

/** Fractional bits of the roots of the first primes (FIPS 180-4): square roots start the hash, cube roots drive its rounds. */
function rootBits(root: (prime: number) => number, count: number): Uint32Array {
  const bits = new Uint32Array(count);
  for (let candidate = 2, found = 0; found < count; candidate++) {
    let prime = true;
    for (let d = 2; d * d <= candidate; d++) prime &&= candidate % d !== 0;
    if (prime) bits[found++] = ((root(candidate) % 1) * 2 ** 32) | 0;
  }
  return bits;
}

const constants = rootBits((prime) => pow(prime, 1 / 3), 64);
const initial = rootBits(Math.sqrt, 8);

const turn = (x: number, n: number): number => (x >>> n) | (x << (32 - n));

/** UTF-8 bytes of a text; half of a surrogate pair becomes U+FFFD. */
function utf8(text: string): Uint8Array {
  type Encoder = new () => { encode(text: string): Uint8Array };
  const { TextEncoder } = globalThis as unknown as { readonly TextEncoder: Encoder };
  return new TextEncoder().encode(text);
}

/** The message with its end mark and its length in bits, a whole number of 64-byte blocks. */
function pad(message: Uint8Array): DataView {
  const blocks = Math.ceil((message.length + 9) / 64);
  const padded = new Uint8Array(blocks * 64);
  padded.set(message);
  padded[message.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(message.length / 2 ** 29));
  view.setUint32(padded.length - 4, message.length << 3);
  return view;
}

/** Mixes one block into the hash. */
function mixBlock(hash: Uint32Array, block: DataView, offset: number, words: Uint32Array): void {
  for (let i = 0; i < 16; i++) words[i] = block.getUint32(offset + 4 * i);
  for (let i = 16; i < 64; i++) {
    const a = words[i - 15];
    const b = words[i - 2];
    const s0 = turn(a, 7) ^ turn(a, 18) ^ (a >>> 3);
    const s1 = turn(b, 17) ^ turn(b, 19) ^ (b >>> 10);
    words[i] = (words[i - 16] + s0 + words[i - 7] + s1) | 0;
  }
  let [a, b, c, d, e, f, g, h] = hash;
  for (let i = 0; i < 64; i++) {
    const s1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const t1 = (h + s1 + ((e & f) ^ (~e & g)) + constants[i] + words[i]) | 0;
    const s0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
    const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + t1) | 0;
    d = c;
    c = b;
    b = a;
    a = (t1 + t2) | 0;
  }
  [a, b, c, d, e, f, g, h].forEach((value, i) => (hash[i] = (hash[i] + value) | 0));
}

/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). Written out here because the
 * browser's own is asynchronous and Node's is not in a browser.
 */
export function sha256(text: string): string {
  const block = pad(utf8(text));
  const hash = initial.slice();
  const words = new Uint32Array(64);
  for (let offset = 0; offset < block.byteLength; offset += 64) mixBlock(hash, block, offset, words);
  return Array.from(hash, (word) => word.toString(16).padStart(8, '0')).join('');
}
