import { exp } from '../../base/elementary.js';
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

/**
 * Dissolution of calcite, mol d-1: k0 m (k1 h + k2 CO2 + k3) w(calcium x s), of variables [calcium, s, pH, CO2, m] with s
 * the saturation per mol of calcium.
 */
export const dissolving = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * v[at[4]] * (k[1] * hydrogen(v[at[2]]) + k[2] * v[at[3]] + k[3]) * wanting(v[at[0]] * v[at[1]]),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const acid = k[1] * hydrogen(v[at[2]]);
    const attack = acid + k[2] * v[at[3]] + k[3];
    const left = wanting(v[at[0]] * v[at[1]]);
    const bySaturation = k[0] * v[at[4]] * attack * wantingSlope(v[at[0]] * v[at[1]]);
    d[0] = bySaturation * v[at[1]];
    d[1] = bySaturation * v[at[0]];
    d[2] = -Math.LN10 * k[0] * v[at[4]] * acid * left;
    d[3] = k[0] * v[at[4]] * k[2] * left;
    d[4] = k[0] * attack * left;
  },
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

/** Scale, mol d-1: k0 f(calcium x s; k1), of variables [calcium, s]. */
export const scaling = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * excess(v[at[0]] * v[at[1]], k[1]),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const slope = k[0] * excessSlope(v[at[0]] * v[at[1]], k[1]);
    d[0] = slope * v[at[1]];
    d[1] = slope * v[at[0]];
  },
};
