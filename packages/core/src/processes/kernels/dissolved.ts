import type { Kernel } from './kernel.js';
import { inhibition, inhibitionSlope, monod, monodSlope } from './rate-terms.js';

/** k0 M(o; k1) M(tan; k2) c, of variables [o, tan, c]. */
export const withOxygen = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * monod(v[at[0]], k[1]) * monod(v[at[1]], k[2]) * v[at[2]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const oxygen = monod(v[at[0]], k[1]);
    const tan = monod(v[at[1]], k[2]);
    d[0] = k[0] * monodSlope(v[at[0]], k[1]) * tan * v[at[2]];
    d[1] = k[0] * oxygen * monodSlope(v[at[1]], k[2]) * v[at[2]];
    d[2] = k[0] * oxygen * tan;
  },
};

/** k0 k3 K/(K + o) M(tan; k2) M(nitrate; k4) c with K = k1, of variables [o, tan, nitrate, c]. */
export const withNitrate = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * k[3] * inhibition(v[at[0]], k[1]) * monod(v[at[1]], k[2]) * monod(v[at[2]], k[4]) * v[at[3]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const most = k[0] * k[3];
    const anoxic = inhibition(v[at[0]], k[1]);
    const tan = monod(v[at[1]], k[2]);
    const nitrate = monod(v[at[2]], k[4]);
    d[0] = most * inhibitionSlope(v[at[0]], k[1]) * tan * nitrate * v[at[3]];
    d[1] = most * anoxic * monodSlope(v[at[1]], k[2]) * nitrate * v[at[3]];
    d[2] = most * anoxic * tan * monodSlope(v[at[2]], k[4]) * v[at[3]];
    d[3] = most * anoxic * tan * nitrate;
  },
};

/** Dissolved matter burnt with oxygen and with nitrate together: first the one, then the other, in the same waters. */
export const dissolvedKernel: Kernel = {
  name: 'dissolved',
  rates: ([oxic, anoxic], v, r) => {
    const { count, at, k } = anoxic;
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 4, o += 5) {
      const most = k[o] * monod(v[at[n + 1]], k[o + 2]) * v[at[n + 3]];
      r[oxic.row + i] = most * monod(v[at[n]], k[o + 1]);
      r[anoxic.row + i] = most * k[o + 3] * inhibition(v[at[n]], k[o + 1]) * monod(v[at[n + 2]], k[o + 4]);
    }
  },
  partials: ([oxic, anoxic], v) => {
    const { count, at, k } = anoxic;
    const [a, b] = [oxic.d, anoxic.d];
    for (let i = 0, m = 0, n = 0, o = 0; i < count; i++, m += 3, n += 4, o += 5) {
      const [oxygen, tan, nitrate, c] = [v[at[n]], v[at[n + 1]], v[at[n + 2]], v[at[n + 3]]];
      const fed = monod(tan, k[o + 2]);
      const fedSlope = monodSlope(tan, k[o + 2]);
      const aired = k[o] * monod(oxygen, k[o + 1]);
      a[m] = k[o] * monodSlope(oxygen, k[o + 1]) * fed * c;
      a[m + 1] = aired * fedSlope * c;
      a[m + 2] = aired * fed;
      const most = k[o] * k[o + 3];
      const airless = most * inhibition(oxygen, k[o + 1]);
      const onNitrate = monod(nitrate, k[o + 4]);
      b[n] = most * inhibitionSlope(oxygen, k[o + 1]) * fed * onNitrate * c;
      b[n + 1] = airless * fedSlope * onNitrate * c;
      b[n + 2] = airless * fed * monodSlope(nitrate, k[o + 4]) * c;
      b[n + 3] = airless * fed * onNitrate;
    }
  },
};
