import type { i32 } from '../../base/whole.js';
import type { Kernel } from './kernel.js';
import { bareShare, bareShareSlope, monod, monodSlope } from './rate-terms.js';

const bareDecayKernel: Kernel = {
  name: 'bare-decay',
  rates: (all, v, r) => {
    for (const { count, row, at, k } of all) {
      for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
        const bare = bareShare(v[at[n + 2]], k[o + 2], k[o + 3]);
        r[row + i] = k[o] * monod(v[at[n]], k[o + 1]) * v[at[n + 1]] * bare;
      }
    }
  },
  partials: (all, v) => {
    for (const { count, at, k, d } of all) {
      for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
        const breath = k[o] * monod(v[at[n]], k[o + 1]);
        const bare = bareShare(v[at[n + 2]], k[o + 2], k[o + 3]);
        d[n] = k[o] * monodSlope(v[at[n]], k[o + 1]) * v[at[n + 1]] * bare;
        d[n + 1] = breath * bare;
        d[n + 2] = breath * v[at[n + 1]] * bareShareSlope(v[at[n + 2]], k[o + 2], k[o + 3]);
      }
    }
  },
};

/** k0 M(O2; k1) X (1 - k3 M(H; k2)), of variables [O2, X, H]: cells that breathe themselves away where no heterotrophs cover them. */
export const bareDecay = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * monod(v[at[0]], k[1]) * v[at[1]] * bareShare(v[at[2]], k[2], k[3]),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const breath = k[0] * monod(v[at[0]], k[1]);
    const bare = bareShare(v[at[2]], k[2], k[3]);
    d[0] = k[0] * monodSlope(v[at[0]], k[1]) * v[at[1]] * bare;
    d[1] = breath * bare;
    d[2] = breath * v[at[1]] * bareShareSlope(v[at[2]], k[2], k[3]);
  },
  kernel: bareDecayKernel,
};

/** How fast the share of cells that are awake moves, 1/d; the places of its variables begin at at[n], coefficients at k[o]. */
function wakingAt(v: Float64Array, at: ArrayLike<number>, n: i32, k: ArrayLike<number>, o: i32): number {
  const breath = monod(v[at[n]], k[o + 1]);
  return k[o] * breath * (1 - v[at[n + 1]]) - k[o + 2] * (1 - breath) * (1 - breath) * v[at[n + 1]];
}

/** Fills d[n] and d[n + 1] with its partials. */
function wakingPartialsAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): void {
  const breath = monod(v[at[n]], k[o + 1]);
  const slope = monodSlope(v[at[n]], k[o + 1]);
  d[n] = slope * (k[o] * (1 - v[at[n + 1]]) + 2 * k[o + 2] * (1 - breath) * v[at[n + 1]]);
  d[n + 1] = -k[o] * breath - k[o + 2] * (1 - breath) * (1 - breath);
}

const wakingKernel: Kernel = {
  name: 'waking',
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0; i < count; i++) r[row + i] = wakingAt(v, at, 2 * i, k, 3 * i);
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0; i < count; i++) wakingPartialsAt(v, at, 2 * i, k, 3 * i, d);
  },
};

/**
 * How the share of cells that are awake moves, 1/d, of variables [O2, awake]: k0 M(O2; k1) (1 - w) awakes them, and
 * k2 (1 - M)² w stuns them where air is lacking.
 */
export const waking = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => wakingAt(v, at, 0, k, 0),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    wakingPartialsAt(v, at, 0, k, 0, d);
  },
  kernel: wakingKernel,
};
