import type { Kernel } from './kernel.js';
import { monod, monodSlope } from './rate-terms.js';

/** Denitrification at every place: coefficients and variables as in denitrification.ts. */
export const denitrificationKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
      const anoxic = 1 - k[o + 1] * monod(v[at[n]], k[o + 2]);
      r[row + i] = k[o] * anoxic * monod(v[at[n + 1]], k[o + 3]) * v[at[n + 2]];
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
      const settled = v[at[n + 2]];
      const anoxic = 1 - k[o + 1] * monod(v[at[n]], k[o + 2]);
      const nitrate = monod(v[at[n + 1]], k[o + 3]);
      d[n] = -k[o] * k[o + 1] * monodSlope(v[at[n]], k[o + 2]) * nitrate * settled;
      d[n + 1] = k[o] * anoxic * monodSlope(v[at[n + 1]], k[o + 3]) * settled;
      d[n + 2] = k[o] * anoxic * nitrate;
    }
  },
};
