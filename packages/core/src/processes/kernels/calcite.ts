import { exp } from '../../base/elementary.js';
import type { i32 } from '../../base/whole.js';
import { pHOf } from '../../chemistry/acid-base.js';
import { HYDROGEN_AFTER_PH, type Kernel } from './kernel.js';

/** Width, as a share of saturation, over which dissolution bends to nothing at saturation: a join without a corner. */
const BEND = 0.01;

/** Hydrogen ion, mol m-3, at a pH. */
function hydrogen(pH: number): number {
  return 1000 * exp(-Math.LN10 * pH);
}

/** What is wanting of saturation: near 1 - saturation, 1 in water without calcium, 0 from saturation on. */
function wanting(saturation: number): number {
  const z = 1 - saturation;
  return z > 0 ? ((1 + BEND) * z * z) / (z + BEND) : 0;
}

/** d(wanting)/d(saturation). */
function wantingSlope(saturation: number): number {
  const z = 1 - saturation;
  return z > 0 ? (-(1 + BEND) * z * (z + 2 * BEND)) / ((z + BEND) * (z + BEND)) : 0;
}

/** Dissolution at a pH; here and below the places of variables begin at at[n], coefficients at k[o]. */
function dissolvingAt(
  pH: number,
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
): number {
  const attack = k[o + 1] * hydrogen(pH) + k[o + 2] * v[at[n + 3]] + k[o + 3];
  return k[o] * v[at[n + 4]] * attack * wanting(v[at[n]] * v[at[n + 1]]);
}

/** Fills d[n] to d[n + 4] with its partials. */
function dissolvingPartialsAt(
  pH: number,
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): void {
  const acid = k[o + 1] * hydrogen(pH);
  const attack = acid + k[o + 2] * v[at[n + 3]] + k[o + 3];
  const saturation = v[at[n]] * v[at[n + 1]];
  const left = wanting(saturation);
  const bySaturation = k[o] * v[at[n + 4]] * attack * wantingSlope(saturation);
  d[n] = bySaturation * v[at[n + 1]];
  d[n + 1] = bySaturation * v[at[n]];
  d[n + 2] = -Math.LN10 * k[o] * v[at[n + 4]] * acid * left;
  d[n + 3] = k[o] * v[at[n + 4]] * k[o + 2] * left;
  d[n + 4] = k[o] * attack * left;
}

const dissolvingKernel: Kernel = {
  name: 'dissolving',
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0; i < count; i++, n += 5)
      r[row + i] = dissolvingAt(pHOf(v[at[n + 2] + HYDROGEN_AFTER_PH]), v, at, n, k, 4 * i);
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0; i < count; i++, n += 5)
      dissolvingPartialsAt(pHOf(v[at[n + 2] + HYDROGEN_AFTER_PH]), v, at, n, k, 4 * i, d);
  },
};

/**
 * Dissolution of calcite, mol d-1: k0 m (k1 h + k2 CO2 + k3) w(calcium x s), of variables [calcium, s, pH, CO2, m] with s
 * the saturation per mol of calcium.
 */
export const dissolving = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    dissolvingAt(v[at[2]], v, at, 0, k, 0),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    dissolvingPartialsAt(v[at[2]], v, at, 0, k, 0, d);
  },
  kernel: dissolvingKernel,
};

/** Saturation beyond that at which scale begins, as what drives it: z2/(z + onset), z = saturation - onset; none below. */
function excess(saturation: number, onset: number): number {
  const z = saturation - onset;
  return z > 0 ? (z * z) / (z + onset) : 0;
}

/** d(excess)/d(saturation). */
function excessSlope(saturation: number, onset: number): number {
  const z = saturation - onset;
  return z > 0 ? (z * (z + 2 * onset)) / ((z + onset) * (z + onset)) : 0;
}

/** Scale at one place. */
function scalingAt(v: Float64Array, at: ArrayLike<number>, n: i32, k: ArrayLike<number>, o: i32): number {
  return k[o] * excess(v[at[n]] * v[at[n + 1]], k[o + 1]);
}

/** Fills d[n] and d[n + 1] with its partials. */
function scalingPartialsAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): void {
  const slope = k[o] * excessSlope(v[at[n]] * v[at[n + 1]], k[o + 1]);
  d[n] = slope * v[at[n + 1]];
  d[n + 1] = slope * v[at[n]];
}

const scalingKernel: Kernel = {
  name: 'scaling',
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0; i < count; i++) r[row + i] = scalingAt(v, at, 2 * i, k, 2 * i);
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0; i < count; i++) scalingPartialsAt(v, at, 2 * i, k, 2 * i, d);
  },
};

/** Scale, mol d-1: k0 f(calcium x s; k1), of variables [calcium, s]. */
export const scaling = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => scalingAt(v, at, 0, k, 0),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    scalingPartialsAt(v, at, 0, k, 0, d);
  },
  kernel: scalingKernel,
};
