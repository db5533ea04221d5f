import type { Kernel } from './kernel.js';
import { monod, monodSlope } from './rate-terms.js';

const firstOrderKernel: Kernel = {
  rates: (all, v, r) => {
    for (const { count, row, at, k } of all) {
      for (let i = 0, n = 0; i < count; i++, n += 2) {
        r[row + i] = k[n] * monod(v[at[n]], k[n + 1]) * v[at[n + 1]];
      }
    }
  },
  partials: (all, v) => {
    for (const { count, at, k, d } of all) {
      for (let i = 0, n = 0; i < count; i++, n += 2) {
        d[n] = k[n] * monodSlope(v[at[n]], k[n + 1]) * v[at[n + 1]];
        d[n + 1] = k[n] * monod(v[at[n]], k[n + 1]);
      }
    }
  },
};

/** k0 M(s; k1) a, of variables [s, a]: an amount that goes at a rate the substrate (oxygen) allows. */
export const firstOrder = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * monod(v[at[0]], k[1]) * v[at[1]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[0] = k[0] * monodSlope(v[at[0]], k[1]) * v[at[1]];
    d[1] = k[0] * monod(v[at[0]], k[1]);
  },
  kernel: firstOrderKernel,
};

const proportionalKernel: Kernel = {
  rates: (all, v, r) => {
    for (const { count, row, at, k } of all) for (let i = 0; i < count; i++) r[row + i] = k[i] * v[at[i]];
  },
  partials: (all) => {
    for (const { count, k, d } of all) for (let i = 0; i < count; i++) d[i] = k[i];
  },
};

/** k0 a, of variables [a]. */
export const proportional = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => k[0] * v[at[0]],
  partials: (_v: Float64Array, _at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[0] = k[0];
  },
  kernel: proportionalKernel,
};

const kernel: Kernel = {
  rates: (all, v, r) => {
    for (const { count, row, at, k } of all) {
      for (let i = 0; i < count; i++) r[row + i] = k[2 * i] * (k[2 * i + 1] - v[at[i]]);
    }
  },
  partials: (all) => {
    for (const { count, k, d } of all) for (let i = 0; i < count; i++) d[i] = -k[2 * i];
  },
};

/** k0 (k1 - c), of variables [c]: exchange of a gas towards its saturation. */
export const exchange = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => k[0] * (k[1] - v[at[0]]),
  partials: (_v: Float64Array, _at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[0] = -k[0];
  },
  kernel,
};
