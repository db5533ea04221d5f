import { monod, monodSlope } from './limits.js';

/** k0 M(s; k1) a, of variables [s, a]: an amount that goes at a rate the substrate (oxygen) allows. */
export const firstOrder = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * monod(v[at[0]], k[1]) * v[at[1]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[0] = k[0] * monodSlope(v[at[0]], k[1]) * v[at[1]];
    d[1] = k[0] * monod(v[at[0]], k[1]);
  },
};

/** k0 a, of variables [a]. */
export const proportional = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => k[0] * v[at[0]],
  partials: (_v: Float64Array, _at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[0] = k[0];
  },
};
