import { HYDROGEN_AFTER_PH, type Kernel, type Sites } from './kernel.js';
import { inhibition, inhibitionSlope, monod, monodSlope, reserve, reserveSlope } from './limits.js';

/** Variables and coefficients a place, as in oxidiser.ts. */
const WIDTH = 6;
const SIZE = 10;

/**
 * Growth and idling of one population together: the activity is worked out once, and from the hydrogen ion in
 * place of the pH, so that the bell of limits.ts, h / (h + h²/h_low + h_high), takes no exponential. The
 * first process handed over is growth, the second idling, at the same places.
 * @param inhibited whether the third variable inhibits (free ammonia) or is a substrate (alkalinity)
 */
function populationKernel(inhibited: boolean): Kernel {
  return {
    rates: ([growth, idle], v, r) => {
      const { count, at, k } = growth;
      for (let i = 0, n = 0, o = 0; i < count; i++, n += WIDTH, o += SIZE) {
        const third = v[at[n + 2]];
        const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
        const living = v[at[n + 4]];
        const activity =
          k[o] *
          monod(v[at[n]], k[o + 1]) *
          monod(v[at[n + 1]], k[o + 2]) *
          (inhibited ? inhibition(third, k[o + 3]) : reserve(third, k[o + 3])) *
          (h / (h + h * h * k[o + 8] + k[o + 9])) *
          living;
        const full = (living + v[at[n + 5]]) / k[o + 6];
        r[growth.row + i] = activity * (1 - full);
        r[idle.row + i] = activity * full * k[o + 7];
      }
    },
    partials: ([growth, idle], v) => {
      for (let i = 0; i < growth.count; i++) partialsAt(growth, idle, i, v, inhibited);
    },
  };
}

/** Partials of growth, activity x (1 - full), and of idling, activity x full / yield. */
function partialsAt(growth: Sites, idle: Sites, i: number, v: Float64Array, inhibited: boolean): void {
  const { at, k, d } = growth;
  const e = idle.d;
  const n = i * WIDTH;
  const o = i * SIZE;
  const s0 = v[at[n]];
  const s1 = v[at[n + 1]];
  const s2 = v[at[n + 2]];
  const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
  const living = v[at[n + 4]];
  const m0 = monod(s0, k[o + 1]);
  const m1 = monod(s1, k[o + 2]);
  const m2 = inhibited ? inhibition(s2, k[o + 3]) : reserve(s2, k[o + 3]);
  const acid = h * k[o + 8];
  const base = k[o + 9] / h;
  const bell = 1 / (1 + acid + base);
  const per = k[o] * m0 * m1 * m2 * bell;
  const activity = per * living;
  const rest = k[o] * m2 * bell * living;
  const a0 = monodSlope(s0, k[o + 1]) * m1 * rest;
  const a1 = monodSlope(s1, k[o + 2]) * m0 * rest;
  const slope = inhibited ? inhibitionSlope(s2, k[o + 3]) : reserveSlope(s2, k[o + 3]);
  const a2 = slope * k[o] * m0 * m1 * bell * living;
  const a3 = Math.LN10 * (acid - base) * bell * activity;
  const full = (living + v[at[n + 5]]) / k[o + 6];
  const left = 1 - full;
  const perRoom = activity / k[o + 6];
  d[n] = a0 * left;
  d[n + 1] = a1 * left;
  d[n + 2] = a2 * left;
  d[n + 3] = a3 * left;
  d[n + 4] = per * left - perRoom;
  d[n + 5] = -perRoom;
  const idling = full * k[o + 7];
  e[n] = a0 * idling;
  e[n + 1] = a1 * idling;
  e[n + 2] = a2 * idling;
  e[n + 3] = a3 * idling;
  e[n + 4] = per * idling + perRoom * k[o + 7];
  e[n + 5] = perRoom * k[o + 7];
}

/** Ammonia oxidisers: third variable alkalinity. */
export const aobKernel = populationKernel(false);

/** Nitrite oxidisers: third variable free ammonia. */
export const nobKernel = populationKernel(true);
