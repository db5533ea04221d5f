import type { i32 } from '../../base/whole.js';

/**
 * All places at which one process works (`count` of them), as tables for one loop: place i reads v[`at`[`width` i + m]], has
 * coefficients `k`[`size` i + n], rate r[`row` + i], and its partials go to `d`[width i + m]. `place`[i] is its index among all
 * places of its kind, ascending: processes that work at some of the same places tell by it which these are.
 */
export interface Sites {
  readonly count: i32;
  readonly row: i32;
  readonly place: Int32Array;
  readonly width: i32;
  readonly size: i32;
  readonly at: Int32Array;
  readonly k: Float64Array;
  readonly d: Float64Array;
}

/**
 * A rate law as loops over all its places: the same numbers as `rate` and `partials` of its processes one
 * by one (tests compare them), without a call for each. Processes that name the same kernel are handed to
 * it together, in the order of the list of processes, so that what they share is worked out once: coefficients
 * that they share are then read from the first of them. Those of this room with a name are made WebAssembly of too, from the same
 * text, and so are written in the subset of `tools/module`.
 */
export interface Kernel {
  /** By which the module of WebAssembly knows it; absent: it is not of the module, and runs as JavaScript. */
  readonly name?: string;
  /** Fills r with the rates at the values v of all variables. */
  readonly rates: (sites: readonly Sites[], v: Float64Array, r: Float64Array) => void;
  /** Fills `d` of each of the sites with the partials at v. */
  readonly partials: (sites: readonly Sites[], v: Float64Array) => void;
}

/** From the place of the pH of a vessel in v to that of its hydrogen ion, mol m-3. */
export const HYDROGEN_AFTER_PH = 4;
