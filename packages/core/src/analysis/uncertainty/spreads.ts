import { floorLog2, powerOfTwo } from '../../base/elementary.js';
import { quantileSorted } from 'd3-array';

/** How many values of a cell are kept as they are; more than so many members are counted in bins. */
const mostExact = 128;

/** What is known of the spread of many cells, each with one value a member at most. */
export interface Spreads {
  readonly kind: 'exact' | 'binned';
  /** Puts the values of a member into cells 0, 1, ...; values that are not finite are left out. */
  add(member: number, values: ArrayLike<number>): void;
  /** Number of values of a cell. */
  count(cell: number): number;
  /**
   * The value below which a share p (0..1) of the values lies, straight lines between neighbours; NaN where
   * there are none. Binned: off by no more than `width`.
   */
  quantile(cell: number, p: number): number;
  /** How far a quantile may be off: 0 where exact, else the width of a bin. */
  width(cell: number): number;
  /** Adds what another holds of the same cells; it must hold other members. */
  merge(other: SpreadsState): void;
  /** Everything held, in one form whatever the order in which it came. Arrays are not copied. */
  state(): SpreadsState;
}

/** A `Spreads` as plain data: its `arrays` in an order of its own, to be kept and given back to `merge`. */
export interface SpreadsState {
  readonly kind: 'exact' | 'binned';
  readonly arrays: readonly (Float64Array | Int16Array | Uint16Array | Uint32Array)[];
}

/** Spreads of few members: every value is kept. */
export function exactSpreads(cells: number, members: number): Spreads {
  const values = new Float64Array(cells * members).fill(Number.NaN);
  let sortedOf = -1;
  let sorted: number[] = [];
  const sort = (cell: number): number[] => {
    if (sortedOf !== cell) {
      const finite = values.subarray(cell * members, (cell + 1) * members).filter(Number.isFinite);
      sorted = Array.from(finite.sort());
      sortedOf = cell;
    }
    return sorted;
  };
  return {
    kind: 'exact',
    add(member, each) {
      sortedOf = -1;
      for (let cell = 0; cell < cells; cell++) values[cell * members + member] = each[cell];
    },
    count: (cell) => sort(cell).length,
    quantile: (cell, p) => quantileSorted(sort(cell), p) ?? Number.NaN,
    width: () => 0,
    merge({ arrays: [others] }) {
      sortedOf = -1;
      others.forEach((value, i) => {
        if (!Number.isNaN(value)) values[i] = value;
      });
    },
    state: () => ({ kind: 'exact', arrays: [values] }),
  };
}

/** Bins of a cell: a power of two. */
const bins = 256;
/** Finest bins of all, and as powers of two below the largest value of a cell: bin numbers stay exact. */
const finest = -1000;
const digits = 44;
/** Exponent of a cell whose values are all the same (or none). */
const single = -32768;

/** Number of the bin of a value where bins are 2^exponent wide and the edges are whole multiples of that. */
const binOf = (value: number, exponent: number): number => binIn(value, powerOfTwo(exponent));

/** The same with the width given. */
function binIn(value: number, width: number): number {
  const scaled = value / width;
  // Far below one bin the quotient may round to 0, on whichever side it was.
  return scaled === 0 && value < 0 ? -1 : Math.floor(scaled);
}

/** Where a bin is kept: bins in use span less than the room, so their place in a ring tells them apart. */
const slotOf = (bin: number): number => bin - Math.floor(bin / bins) * bins;

/** The least exponent with which everything from one value to another falls into the bins. */
function exponentFor(low: number, high: number): number {
  const least = Math.max(finest, floorLog2(Math.max(Math.abs(low), Math.abs(high))) - digits);
  let exponent = Math.max(least, floorLog2(high - low) - floorLog2(bins));
  while (binOf(high, exponent) - binOf(low, exponent) >= bins) exponent++;
  while (exponent > least && binOf(high, exponent - 1) - binOf(low, exponent - 1) < bins) exponent--;
  return exponent;
}

/** What is counted of some cells: `bins` counts each, the ends of their values, and 2^`exponents`, the width of a bin. */
interface Bins {
  readonly counts: Uint16Array | Uint32Array;
  readonly lows: Float64Array;
  readonly highs: Float64Array;
  readonly exponents: Int16Array;
  /** 2^exponent, at hand; NaN of a cell of one value. */
  readonly widths: Float64Array;
}

function emptyBins(cells: number, members: number): Bins {
  return {
    counts: members <= 0xffff ? new Uint16Array(cells * bins) : new Uint32Array(cells * bins),
    lows: new Float64Array(cells).fill(Infinity),
    highs: new Float64Array(cells).fill(-Infinity),
    exponents: new Int16Array(cells).fill(single),
    widths: new Float64Array(cells).fill(Number.NaN),
  };
}

/** Opens what widens a cell until it spans `low` to `high`. */
function openSpan({ counts, lows, highs, exponents, widths }: Bins) {
  const scratch = new Float64Array(bins);
  return (cell: number, low: number, high: number): void => {
    const from = exponents[cell];
    const oldLow = lows[cell];
    lows[cell] = Math.min(oldLow, low);
    highs[cell] = Math.max(highs[cell], high);
    if (lows[cell] === highs[cell]) return;
    const to = exponentFor(lows[cell], highs[cell]);
    if (to === from) return;
    exponents[cell] = to;
    widths[cell] = powerOfTwo(to);
    if (oldLow === Infinity) return;
    const mine = counts.subarray(cell * bins, (cell + 1) * bins);
    scratch.fill(0);
    if (from === single) scratch[slotOf(binOf(oldLow, to))] = mine[0];
    else {
      const first = binOf(oldLow, from);
      for (let i = 0; i < bins; i++)
        scratch[slotOf(Math.floor((first + i) / powerOfTwo(to - from)))] += mine[slotOf(first + i)];
    }
    mine.set(scratch);
  };
}

/** Number of values of a cell. */
function countOf({ counts }: Bins, cell: number): number {
  let total = 0;
  for (let i = cell * bins; i < (cell + 1) * bins; i++) total += counts[i];
  return total;
}

/** The value of a rank (0 the lowest) of a cell, as if the values of a bin stood evenly in it. */
function ranked({ counts, lows, highs, exponents }: Bins, cell: number, rank: number): number {
  const exponent = exponents[cell];
  if (exponent === single) return lows[cell];
  const first = binOf(lows[cell], exponent);
  let before = 0;
  for (let bin = first; ; bin++) {
    const here = counts[cell * bins + slotOf(bin)];
    if (rank < before + here) {
      const low = Math.max(lows[cell], bin * powerOfTwo(exponent));
      const high = Math.min(highs[cell], (bin + 1) * powerOfTwo(exponent));
      return low + ((rank - before + 0.5) / here) * (high - low);
    }
    before += here;
  }
}

/** The value below which a share p of the values of a cell lies; the lowest and the highest are known as they are. */
function quantileOf(known: Bins, cell: number, p: number): number {
  const { lows, highs } = known;
  const total = countOf(known, cell);
  if (total === 0) return Number.NaN;
  const place = (total - 1) * p;
  const below = Math.floor(place);
  const low = below === 0 ? lows[cell] : below === total - 1 ? highs[cell] : ranked(known, cell, below);
  if (place === below) return low;
  const high = below + 1 === total - 1 ? highs[cell] : ranked(known, cell, below + 1);
  return low + (place - below) * (high - low);
}

/**
 * Spreads of any number of members in memory that does not grow with it. Each cell counts in at most 256
 * bins whose width is the least power of two that spans its values; edges are multiples of the width, so
 * that two bins make one exactly when the span grows. What is held follows from the values alone, whatever
 * the order or the shards in which they came. A bin is between 1/256 and 1/127 of the span, but never finer than 2^-44 of
 * the largest value: bin numbers stay exact.
 */
export function binnedSpreads(cells: number, members: number): Spreads {
  const known = emptyBins(cells, members);
  const { counts, lows, highs, exponents, widths } = known;
  const span = openSpan(known);

  function put(cell: number, value: number, times: number): void {
    if (value < lows[cell] || value > highs[cell]) span(cell, value, value);
    const slot = exponents[cell] === single ? 0 : slotOf(binIn(value, widths[cell]));
    counts[cell * bins + slot] += times;
  }

  function merge({ arrays }: SpreadsState): void {
    const [otherCounts, otherLows, otherHighs, otherExponents] = arrays;
    for (let cell = 0; cell < cells; cell++) {
      if (otherLows[cell] === Infinity) continue;
      span(cell, otherLows[cell], otherHighs[cell]);
      const exponent = otherExponents[cell];
      if (exponent === single) {
        put(cell, otherLows[cell], otherCounts[cell * bins]);
        continue;
      }
      const first = binOf(otherLows[cell], exponent);
      for (let i = 0; i < bins; i++) {
        const times = otherCounts[cell * bins + slotOf(first + i)];
        const bin = Math.floor((first + i) / powerOfTwo(exponents[cell] - exponent));
        if (times > 0) counts[cell * bins + slotOf(bin)] += times;
      }
    }
  }

  return {
    kind: 'binned',
    add(_, values) {
      for (let cell = 0; cell < cells; cell++) {
        // Adding 0 makes one zero of two, so that what is held does not depend on the order.
        if (Number.isFinite(values[cell])) put(cell, values[cell] + 0, 1);
      }
    },
    count: (cell) => countOf(known, cell),
    quantile: (cell, p) => quantileOf(known, cell, p),
    width: (cell) => (exponents[cell] === single ? 0 : powerOfTwo(exponents[cell])),
    merge,
    state: () => ({ kind: 'binned', arrays: [counts, lows, highs, exponents] }),
  };
}

/** Spreads of cells over members: exact for up to 128, binned for more. */
export function openSpreads(cells: number, members: number): Spreads {
  return members <= mostExact ? exactSpreads(cells, members) : binnedSpreads(cells, members);
}
