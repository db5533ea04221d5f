import type { i32 } from '../../base/whole.js';
import { exp } from '../../base/elementary.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import type { Kernel } from './kernel.js';
import { arrhenius, inhibition, inhibitionSlope, monod, monodSlope } from './rate-terms.js';

/** Variables of settled solids that breathe oxygen. */
export const oxicReads = ['oxygen', 'settled', 'settled-refractory'] as const;

/** Variables of settled solids where oxygen does not reach. */
export const anoxicReads = ['oxygen', 'nitrate', 'settled', 'settled-refractory'] as const;

/**
 * m / L of settled solids on a floor, from q = k1, the oxygen o over them, and what of them breaks down (s) and hardly
 * does (r): q sqrt(s (s + r) / o). Oxygen goes as deep as it lasts (zero order in oxygen, no flux below): L = sqrt(2 D
 * o rho / (k d)), where all s + r take up room and only s breathes. None lies there: 0.
 */
function loadAt(q: number, o: number, s: number, r: number): number {
  const both = s * (s + r);
  return both > 0 ? q * Math.sqrt(both / o) : 0;
}

/** Share of a layer of load x = m/L that oxygen reaches, (1 - e^-x) / x: all of a thin one, L of a thick one. */
function reached(x: number): number {
  return x > 1e-3 ? (1 - exp(-x)) / x : 1 - x / 2 + (x * x) / 6 - (x * x * x) / 24;
}

/** x d(reached)/dx. */
function reachedSlope(x: number): number {
  return x > 1e-3 ? exp(-x) - reached(x) : -x / 2 + (x * x) / 3 - (x * x * x) / 8;
}

/** The same, where `share` is reached: e^-x is 1 - x share. */
function slopeAt(x: number, share: number): number {
  return x > 1e-3 ? 1 - x * share - share : reachedSlope(x);
}

/** Share of settled solids that breathe oxygen; k: 1 reach (q), 2 half-saturation. None without oxygen. */
function oxicShare(o: number, s: number, r: number, k: ArrayLike<number>, at: i32): number {
  return o > 0 ? monod(o, k[at + 2]) * reached(loadAt(k[at + 1], o, s, r)) : 0;
}

/** d(oxicShare)/d(oxygen). */
function oxicByOxygen(o: number, s: number, r: number, k: ArrayLike<number>, at: i32): number {
  if (!(o > 0)) return 0;
  const x = loadAt(k[at + 1], o, s, r);
  return monodSlope(o, k[at + 2]) * reached(x) - (monod(o, k[at + 2]) * reachedSlope(x)) / (2 * o);
}

/** s d(oxicShare)/ds. */
function oxicBySettled(o: number, s: number, r: number, k: ArrayLike<number>, at: i32): number {
  const x = o > 0 ? loadAt(k[at + 1], o, s, r) : 0;
  return x > 0 ? monod(o, k[at + 2]) * reachedSlope(x) * (0.5 + (0.5 * s) / (s + r)) : 0;
}

/** s d(oxicShare)/dr. */
function oxicByRefractory(o: number, s: number, r: number, k: ArrayLike<number>, at: i32): number {
  const x = o > 0 ? loadAt(k[at + 1], o, s, r) : 0;
  return x > 0 ? (monod(o, k[at + 2]) * reachedSlope(x) * 0.5 * s) / (s + r) : 0;
}

/** What settled matter lies on, m2: the floor, or where there is none (a screen, a filter) the surface, or water a metre deep. */
function spread({ floor, surface, volume }: Conditions): number {
  if (floor > 0) return floor;
  return surface > 0 ? surface : volume;
}

/** Coefficients 0 to 2 of all that breathe: breakdown 1/d, reach q, half-saturation of oxygen. */
export function breathCoefficients(values: Values, at: Conditions): readonly [number, number, number] {
  const breakdown =
    values.value('solids.hydrolysis-settled') * arrhenius(values.value('solids.theta'), at.temperature);
  const uptake = breakdown * (1 - values.value('solids.yield')) * values.value('solids.demand');
  const room = 2 * values.value('solids.oxygen-diffusion') * values.value('solids.settled-density');
  return [breakdown, Math.sqrt(uptake / room) / spread(at), values.value('solids.k-oxygen')];
}

/** Nitrate that 1 g of settled matter takes as it is hydrolysed, g N: 5/4 mol O2 of demand per mol N, less cells. */
export function nitrateTaken(values: Values): number {
  return (
    ((1 - values.value('solids.yield')) * values.value('solids.demand') * values.value('molar.nitrogen')) /
    (1.25 * values.value('molar.oxygen-gas'))
  );
}

/**
 * Coefficients of what oxygen does not reach: those of all, 3 activity, 4 half-saturation of nitrate and 5 by how much it
 * rises with each g that wants nitrate. All that is hydrolysed below is burnt where it meets nitrate on its way up, so
 * that only the still water over the floor sets a bound: N k_N A; uptake R and that bound B give R B / (R + B).
 */
export function airlessCoefficients(values: Values, at: Conditions): readonly number[] {
  const shared = breathCoefficients(values, at);
  const activity = values.value('denitrification.activity');
  const brought = values.value('denitrification.transfer') * spread(at);
  return [
    ...shared,
    activity,
    values.value('denitrification.k-nitrate'),
    (shared[0] * activity * nitrateTaken(values)) / brought,
  ];
}

/** k0 x share that oxygen reaches x s, of variables [oxygen, s, r]. */
export const oxic = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * oxicShare(v[at[0]], v[at[1]], v[at[2]], k, 0) * v[at[1]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const o = v[at[0]];
    const s = v[at[1]];
    const r = v[at[2]];
    d[0] = k[0] * oxicByOxygen(o, s, r, k, 0) * s;
    d[1] = k[0] * (oxicShare(o, s, r, k, 0) + oxicBySettled(o, s, r, k, 0));
    d[2] = k[0] * oxicByRefractory(o, s, r, k, 0);
  },
};

/** Half-saturation of nitrate where u of settled matter wants it, k4 + k5 u: what lies deep waits for what comes through still water. */
function halfSaturation(u: number, k: ArrayLike<number>, at: i32): number {
  return u > 0 ? k[at + 4] + k[at + 5] * u : k[at + 4];
}

/** d(n/(K + n))/dK; `monod` beside it. */
function monodByHalf(n: number, half: number): number {
  return n > 0 ? -n / ((half + n) * (half + n)) : -n / (half * half);
}

/** d(K/(K + n))/dK; `inhibition` beside it. */
function inhibitionByHalf(n: number, half: number): number {
  return n > 0 ? n / ((half + n) * (half + n)) : 0;
}

/** What k5 counts for: half-saturation rises by it as u grows above 0. */
function waiting(u: number, k: ArrayLike<number>, at: i32): number {
  return u > 0 ? k[at + 5] * u : 0;
}

/** k0 k3 u M(nitrate; k4 + k5 u), u the settled matter that oxygen does not reach, of variables [oxygen, nitrate, s, r]. */
export const anoxic = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => {
    const u = (1 - oxicShare(v[at[0]], v[at[2]], v[at[3]], k, 0)) * v[at[2]];
    return k[0] * k[3] * u * monod(v[at[1]], halfSaturation(u, k, 0));
  },
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const o = v[at[0]];
    const n = v[at[1]];
    const s = v[at[2]];
    const r = v[at[3]];
    const without = 1 - oxicShare(o, s, r, k, 0);
    const half = halfSaturation(without * s, k, 0);
    const by = k[0] * k[3] * (monod(n, half) + waiting(without * s, k, 0) * monodByHalf(n, half));
    d[0] = -by * oxicByOxygen(o, s, r, k, 0) * s;
    d[1] = k[0] * k[3] * without * s * monodSlope(n, half);
    d[2] = by * (without - oxicBySettled(o, s, r, k, 0));
    d[3] = -by * oxicByRefractory(o, s, r, k, 0);
  },
};

/** As `anoxic`, where nitrate does not come: K/(K + nitrate) in place of M. */
export const anaerobic = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => {
    const u = (1 - oxicShare(v[at[0]], v[at[2]], v[at[3]], k, 0)) * v[at[2]];
    return k[0] * k[3] * u * inhibition(v[at[1]], halfSaturation(u, k, 0));
  },
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const o = v[at[0]];
    const n = v[at[1]];
    const s = v[at[2]];
    const r = v[at[3]];
    const without = 1 - oxicShare(o, s, r, k, 0);
    const half = halfSaturation(without * s, k, 0);
    const by = k[0] * k[3] * (inhibition(n, half) + waiting(without * s, k, 0) * inhibitionByHalf(n, half));
    d[0] = -by * oxicByOxygen(o, s, r, k, 0) * s;
    d[1] = k[0] * k[3] * without * s * inhibitionSlope(n, half);
    d[2] = by * (without - oxicBySettled(o, s, r, k, 0));
    d[3] = -by * oxicByRefractory(o, s, r, k, 0);
  },
};

/** Coefficients a floor of what breathes nitrate or nothing. */
const SIZE = 6;

/**
 * The three breaths of settled solids together, in the order oxygen, nitrate, neither: the share that oxygen reaches is
 * worked out once a floor.
 */
export const sludgeKernel: Kernel = {
  name: 'sludge',
  rates: ([oxic, anoxic, anaerobic], v, r) => {
    const { count, at, k } = anoxic;
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 4, o += SIZE) {
      const s = v[at[n + 2]];
      const share = oxicShare(v[at[n]], s, v[at[n + 3]], k, o);
      const u = (1 - share) * s;
      const half = halfSaturation(u, k, o);
      const rest = k[o] * k[o + 3] * u;
      r[oxic.row + i] = k[o] * share * s;
      r[anoxic.row + i] = rest * monod(v[at[n + 1]], half);
      r[anaerobic.row + i] = rest * inhibition(v[at[n + 1]], half);
    }
  },
  partials: ([oxic, anoxic, anaerobic], v) => {
    const { count, at, k } = anoxic;
    const [a, b, c] = [oxic.d, anoxic.d, anaerobic.d];
    for (let i = 0, m = 0, n = 0, o = 0; i < count; i++, m += 3, n += 4, o += SIZE) {
      const oxygen = v[at[n]];
      const nitrate = v[at[n + 1]];
      const s = v[at[n + 2]];
      const r = v[at[n + 3]];
      const aired = oxygen > 0 ? monod(oxygen, k[o + 2]) : 0;
      const x = oxygen > 0 ? loadAt(k[o + 1], oxygen, s, r) : 0;
      const deep = reached(x);
      const slope = aired * slopeAt(x, deep);
      const share = aired * deep;
      // As oxicByOxygen, oxicBySettled and oxicByRefractory, of one load.
      const byOxygen = oxygen > 0 ? (monodSlope(oxygen, k[o + 2]) * deep - slope / (2 * oxygen)) * s : 0;
      const bySettled = share + (x > 0 ? slope * (0.5 + (0.5 * s) / (s + r)) : 0);
      const byRefractory = x > 0 ? (slope * 0.5 * s) / (s + r) : 0;
      a[m] = k[o] * byOxygen;
      a[m + 1] = k[o] * bySettled;
      a[m + 2] = k[o] * byRefractory;
      const most = k[o] * k[o + 3];
      const u = (1 - share) * s;
      const half = halfSaturation(u, k, o);
      const wait = waiting(u, k, o);
      const on = most * (monod(nitrate, half) + wait * monodByHalf(nitrate, half));
      const off = most * (inhibition(nitrate, half) + wait * inhibitionByHalf(nitrate, half));
      b[n] = -on * byOxygen;
      b[n + 1] = most * u * monodSlope(nitrate, half);
      b[n + 2] = on * (1 - bySettled);
      b[n + 3] = -on * byRefractory;
      c[n] = -off * byOxygen;
      c[n + 1] = most * u * inhibitionSlope(nitrate, half);
      c[n + 2] = off * (1 - bySettled);
      c[n + 3] = -off * byRefractory;
    }
  },
};
