import type { Kernel } from './kernel.js';
import { monod, monodSlope } from './rate-terms.js';

/** Feed eaten at every place: coefficients and variables as in feeding.ts. */
export const feedingKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 3) {
      r[row + i] = (k[o] + k[o + 1] * v[at[n + 1]]) * monod(v[at[n]], k[o + 2]);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 3) {
      d[n] = (k[o] + k[o + 1] * v[at[n + 1]]) * monodSlope(v[at[n]], k[o + 2]);
      d[n + 1] = k[o + 1] * monod(v[at[n]], k[o + 2]);
    }
  },
};

/** Feed not eaten at every place: coefficients and variables as in uneaten-feed.ts. */
export const uneatenKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 4) {
      const eaten = k[o + 2] * monod(v[at[n]], k[o + 3]);
      r[row + i] = (k[o] + k[o + 1] * v[at[n + 1]]) * (1 - eaten);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 4) {
      d[n] = -(k[o] + k[o + 1] * v[at[n + 1]]) * k[o + 2] * monodSlope(v[at[n]], k[o + 3]);
      d[n + 1] = k[o + 1] * (1 - k[o + 2] * monod(v[at[n]], k[o + 3]));
    }
  },
};
