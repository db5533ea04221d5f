// Unpacks LZMA, by Igor Pavlov's specification of it (draft of 2015-06-14, public domain): a script packed so is a sixth smaller
// than one deflated, and no browser unpacks anything better than that by itself.

/** Places of the kinds of probability in one table, in order, with how many each kind has. */
const sizes = {
  isMatch: 192,
  isRep: 12,
  isRepG0: 12,
  isRepG1: 12,
  isRepG2: 12,
  isRep0Long: 192,
  slot: 256,
  special: 128,
  align: 16,
  length: 514,
  repLength: 514,
} as const;

type Kind = keyof typeof sizes;

const places = ((): Readonly<Record<Kind | 'literal', number>> => {
  const found = { literal: 0 } as Record<Kind | 'literal', number>;
  let at = 0;
  for (const kind of Object.keys(sizes) as Kind[]) {
    found[kind] = at;
    at += sizes[kind];
  }
  found.literal = at;
  return found;
})();

/** Reads bits from a packed stream, each by the probability that stands at a place of the table. */
function openBits(packed: Uint8Array, from: number, probabilities: Uint16Array) {
  let at = from + 5;
  let range = -1;
  let code = 0;
  // The first byte is always 0.
  for (let i = from + 1; i < at; i++) code = (code << 8) | packed[i];
  /** A bit by the probability at a place. Numbers are unsigned in 32 bits: turned by the highest, they compare as signed. */
  const bit = (place: number): number => {
    const odds = probabilities[place];
    const bound = Math.imul(range >>> 11, odds);
    let found = 0;
    if ((code ^ 0x80000000) < (bound ^ 0x80000000)) {
      range = bound;
      probabilities[place] = odds + ((2048 - odds) >>> 5);
    } else {
      range = (range - bound) | 0;
      code = (code - bound) | 0;
      probabilities[place] = odds - (odds >>> 5);
      found = 1;
    }
    if (range >>> 24 === 0) {
      range <<= 8;
      code = (code << 8) | packed[at++];
    }
    return found;
  };
  /** Bits that are as likely 0 as 1. */
  const direct = (count: number): number => {
    let found = 0;
    for (let i = 0; i < count; i++) {
      range >>>= 1;
      code = (code - range) | 0;
      const borrow = code >> 31;
      code = (code + (range & borrow)) | 0;
      found = (found << 1) + borrow + 1;
      if (range >>> 24 === 0) {
        range <<= 8;
        code = (code << 8) | packed[at++];
      }
    }
    return found;
  };
  const tree = (place: number, count: number): number => {
    let node = 1;
    for (let i = 0; i < count; i++) node = (node << 1) + bit(place + node);
    return node - (1 << count);
  };
  const reverse = (place: number, count: number): number => {
    let node = 1;
    let found = 0;
    for (let i = 0; i < count; i++) {
      const one = bit(place + node);
      node = (node << 1) + one;
      found |= one << i;
    }
    return found;
  };
  const length = (place: number, low: number): number => {
    if (bit(place) === 0) return tree(place + 2 + (low << 3), 3);
    if (bit(place + 1) === 0) return 8 + tree(place + 130 + (low << 3), 3);
    return 16 + tree(place + 258, 8);
  };
  return { bit, direct, tree, reverse, length };
}

type Bits = ReturnType<typeof openBits>;

/** The distance of a match, from its slot on. */
function distanceBy({ direct, tree, reverse }: Bits, length: number): number {
  const slot = tree(places.slot + (Math.min(length, 3) << 6), 6);
  if (slot < 4) return slot;
  const count = (slot >> 1) - 1;
  const first = (2 | (slot & 1)) << count;
  if (slot < 14) return first + reverse(places.special + first - slot, count);
  return first + (direct(count - 4) << 4) + reverse(places.align, 4);
}

/** A byte that is no copy: by the byte before it and, after a copy, by the byte that a further copy would have given. */
function literalBy({ bit }: Bits, place: number, match: number | undefined): number {
  let node = 1;
  let rest = match ?? 0;
  let same = match !== undefined;
  while (same && node < 256) {
    const wanted = (rest >> 7) & 1;
    rest <<= 1;
    const one = bit(place + ((1 + wanted) << 8) + node);
    node = (node << 1) | one;
    same = wanted === one;
  }
  while (node < 256) node = (node << 1) | bit(place + node);
  return node & 255;
}

/** Brings the distance that is used again to the front of the last four. */
function again({ bit }: Bits, state: number, back: number[]): void {
  const which = bit(places.isRepG1 + state) === 0 ? 1 : bit(places.isRepG2 + state) === 0 ? 2 : 3;
  back.unshift(...back.splice(which, 1));
}

/**
 * Unpacks what stands in a file of the kind `.lzma`, which says its length.
 * @param packed the whole file
 * @returns what was packed; of a damaged file something else of that length. Throws RangeError where it copies from nowhere
 */
export function unpack(packed: Uint8Array): Uint8Array<ArrayBuffer> {
  const [how] = packed;
  const [lc, lp, pb] = [how % 9, Math.floor(how / 9) % 5, Math.floor(how / 45)];
  const size = new DataView(packed.buffer, packed.byteOffset).getUint32(5, true);
  const probabilities = new Uint16Array(places.literal + (0x300 << (lc + lp))).fill(1024);
  const bits = openBits(packed, 13, probabilities);
  const { bit, length } = bits;
  const out = new Uint8Array(size);
  const back = [0, 0, 0, 0];
  let state = 0;
  for (let at = 0; at < size;) {
    const low = at & ((1 << pb) - 1);
    const here = (state << 4) + low;
    if (bit(places.isMatch + here) === 0) {
      const context = ((at & ((1 << lp) - 1)) << lc) + ((at > 0 ? out[at - 1] : 0) >> (8 - lc));
      const match = state < 7 ? undefined : out[at - back[0] - 1];
      out[at++] = literalBy(bits, places.literal + 0x300 * context, match);
      state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
      continue;
    }
    let count = 1;
    if (bit(places.isRep + state) === 0) {
      const code = length(places.length, low);
      back.pop();
      back.unshift(distanceBy(bits, code));
      state = state < 7 ? 7 : 10;
      count = code + 2;
    } else {
      const first = bit(places.isRepG0 + state) === 0;
      if (!first) again(bits, state, back);
      if (first && bit(places.isRep0Long + here) === 0) state = state < 7 ? 9 : 11;
      else {
        count = length(places.repLength, low) + 2;
        state = state < 7 ? 8 : 11;
      }
    }
    if (back[0] >= at) throw new RangeError('the packed script is damaged');
    for (; count > 0 && at < size; count--, at++) out[at] = out[at - back[0] - 1];
  }
  return out;
}
