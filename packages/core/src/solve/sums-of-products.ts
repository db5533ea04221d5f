import { sums } from './loops.js';
import type { Bound, Floats, Room } from './room.js';

/** Sums out[i] = Σ a[left p] b[right p] over start[i] <= p < start[i+1]. */
export interface ProductPlaces {
  readonly start: Int32Array;
  readonly left: Int32Array;
  readonly right: Int32Array;
}

const MODES = ['set', 'add', 'negate'] as const;

/** What becomes of a sum: it replaces what is there, is added to it, or replaces it with the sign turned. */
export type SumMode = (typeof MODES)[number];

/** Many short sums of products of two arrays, with places known beforehand. */
export class SumsOfProducts {
  private readonly turn: number;

  constructor(
    private readonly places: ProductPlaces,
    mode: SumMode,
  ) {
    this.turn = MODES.indexOf(mode);
  }

  /** Fills (or adds to) out, by arrays of any kind. */
  apply(a: Float64Array, b: Float64Array, out: Float64Array): void {
    const { start, left, right } = this.places;
    sums(a, b, out, start, left, right, start.length - 1, this.turn);
  }

  /** Lays the places out in a room. What is given takes arrays of the room, and gives what fills (or adds to) the last of them. */
  in(room: Room): (a: Floats, b: Floats, out: Floats) => Bound<void> {
    const [start, left, right] = [this.places.start, this.places.left, this.places.right].map((part) =>
      room.ints(part),
    );
    const count = this.places.start.length - 1;
    return (a, b, out) => room.bind('sums', a, b, out, start, left, right, count, this.turn);
  }
}

/**
 * Groups products by the sum that they belong to, in the order given.
 * @param target for each product, the sum (0 .. count-1) it belongs to
 * @param left its place in the first array
 * @param right its place in the second array
 */
export function groupProducts(
  target: ArrayLike<number>,
  left: ArrayLike<number>,
  right: ArrayLike<number>,
  count: number,
): ProductPlaces {
  const start = new Int32Array(count + 1);
  for (let q = 0; q < target.length; q++) start[target[q] + 1]++;
  for (let i = 0; i < count; i++) start[i + 1] += start[i];
  const next = start.slice(0, count);
  const grouped = { left: new Int32Array(target.length), right: new Int32Array(target.length) };
  for (let q = 0; q < target.length; q++) {
    const p = next[target[q]]++;
    grouped.left[p] = left[q];
    grouped.right[p] = right[q];
  }
  return { start, ...grouped };
}
