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

/**
 * How the share of cells that are awake moves, 1/d, of variables [O2, awake]: k0 M(O2; k1) (1 - w) awakes them, and
 * k2 (1 - M)² w stuns them where air is lacking.
 */
export const waking = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => {
    const breath = monod(v[at[0]], k[1]);
    return k[0] * breath * (1 - v[at[1]]) - k[2] * (1 - breath) * (1 - breath) * v[at[1]];
  },
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const breath = monod(v[at[0]], k[1]);
    const slope = monodSlope(v[at[0]], k[1]);
    d[0] = slope * (k[0] * (1 - v[at[1]]) + 2 * k[2] * (1 - breath) * v[at[1]]);
    d[1] = -k[0] * breath - k[2] * (1 - breath) * (1 - breath);
  },
};
