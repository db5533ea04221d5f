import type { Kernel } from './kernel.js';

const proportionalKernel: Kernel = {
  name: 'proportional',
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

const exchangeKernel: Kernel = {
  name: 'exchange',
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
  kernel: exchangeKernel,
};
