import { hydrogenAt } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import type { Conditions, Process } from '../process.js';
import { HYDROGEN_AFTER_PH, type Kernel, type Sites } from './kernel.js';
import {
  arrhenius,
  bell,
  bellSlope,
  inhibition,
  inhibitionSlope,
  monod,
  monodSlope,
  reserve,
  reserveSlope,
} from './rate-terms.js';

/**
 * Activity of ammonia oxidisers: growth that the substrate would allow, g COD d-1,
 * mu(T) M(TAN) M(O2) M(alkalinity) bell(pH) X, and how full the surface is.
 * Growth, not activity, is limited by room: a share 1 - fullness of the activity makes cells, the
 * rest runs on without growth.
 */
export const aobReads = ['tan', 'oxygen', 'alkalinity', 'pH', 'aob', 'nob'] as const;

/** [mu, K_tan, K_O2, K_alk, pH low, pH high, room g COD, 1/yield, 1/h at pH low, h at pH high (mol m-3)]. */
export function aobCoefficients(values: Values, at: Conditions): readonly number[] {
  return [
    values.value('aob.growth') * arrhenius(values.value('aob.growth-theta'), at.temperature),
    values.value('aob.k-tan'),
    values.value('aob.k-oxygen'),
    values.value('aob.k-alkalinity'),
    values.value('aob.ph-low'),
    values.value('aob.ph-high'),
    values.value('biofilm.capacity') * at.surface,
    1 / values.value('aob.yield'),
    1 / hydrogenAt(values.value('aob.ph-low')),
    hydrogenAt(values.value('aob.ph-high')),
  ];
}

/** Activity, g COD d-1. */
export function aobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return (
    k[0] *
    monod(v[at[0]], k[1]) *
    monod(v[at[1]], k[2]) *
    reserve(v[at[2]], k[3]) *
    bell(v[at[3]], k[4], k[5]) *
    v[at[4]]
  );
}

/** Partials of the activity by the six variables (none by nob). Returns the activity. */
export function aobActivityPartials(
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const tan = monod(v[at[0]], k[1]);
  const oxygen = monod(v[at[1]], k[2]);
  const alkalinity = reserve(v[at[2]], k[3]);
  const acidity = bell(v[at[3]], k[4], k[5]);
  const living = k[0] * v[at[4]];
  const tanOxygen = tan * oxygen;
  const rest = alkalinity * acidity * living;
  d[0] = monodSlope(v[at[0]], k[1]) * oxygen * rest;
  d[1] = monodSlope(v[at[1]], k[2]) * tan * rest;
  d[2] = reserveSlope(v[at[2]], k[3]) * tanOxygen * acidity * living;
  d[3] = bellSlope(v[at[3]], k[4], k[5]) * tanOxygen * alkalinity * living;
  d[4] = k[0] * tanOxygen * alkalinity * acidity;
  d[5] = 0;
  return tanOxygen * rest;
}

/** Nitrite oxidisers: the same with nitrite, oxygen, pH, and inhibition by free ammonia. */
export const nobReads = ['nitrite', 'oxygen', 'ammonia', 'pH', 'nob', 'aob'] as const;

/** [mu, K_nitrite, K_O2, K_I ammonia, pH low, pH high, room g COD, 1/yield, 1/h at pH low, h at pH high (mol m-3)]. */
export function nobCoefficients(values: Values, at: Conditions): readonly number[] {
  return [
    values.value('nob.growth') * arrhenius(values.value('nob.growth-theta'), at.temperature),
    values.value('nob.k-nitrite'),
    values.value('nob.k-oxygen'),
    values.value('nob.ki-ammonia'),
    values.value('nob.ph-low'),
    values.value('nob.ph-high'),
    values.value('biofilm.capacity') * at.surface,
    1 / values.value('nob.yield'),
    1 / hydrogenAt(values.value('nob.ph-low')),
    hydrogenAt(values.value('nob.ph-high')),
  ];
}

/** Activity, g COD d-1. */
export function nobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return (
    k[0] *
    monod(v[at[0]], k[1]) *
    monod(v[at[1]], k[2]) *
    inhibition(v[at[2]], k[3]) *
    bell(v[at[3]], k[4], k[5]) *
    v[at[4]]
  );
}

/** Partials of the activity by the six variables (none by aob). Returns the activity. */
export function nobActivityPartials(
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const nitrite = monod(v[at[0]], k[1]);
  const oxygen = monod(v[at[1]], k[2]);
  const ammonia = inhibition(v[at[2]], k[3]);
  const acidity = bell(v[at[3]], k[4], k[5]);
  const living = k[0] * v[at[4]];
  const nitriteOxygen = nitrite * oxygen;
  const rest = ammonia * acidity * living;
  d[0] = monodSlope(v[at[0]], k[1]) * oxygen * rest;
  d[1] = monodSlope(v[at[1]], k[2]) * nitrite * rest;
  d[2] = inhibitionSlope(v[at[2]], k[3]) * nitriteOxygen * acidity * living;
  d[3] = bellSlope(v[at[3]], k[4], k[5]) * nitriteOxygen * ammonia * living;
  d[4] = k[0] * nitriteOxygen * ammonia * acidity;
  d[5] = 0;
  return nitriteOxygen * rest;
}

type Activity = (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
type ActivityPartials = (
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
) => number;

/** Growth, g COD d-1: activity x room left. Variables 4 and 5 are the two populations, k[6] the room. */
export function growing(
  activity: Activity,
  activityPartials: ActivityPartials,
): Pick<Process, 'rate' | 'partials'> {
  return {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
      activity(v, at, k) * (1 - (v[at[4]] + v[at[5]]) / k[6]),
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
      const whole = activityPartials(v, at, k, d);
      const left = 1 - (v[at[4]] + v[at[5]]) / k[6];
      for (let m = 0; m < 5; m++) d[m] *= left;
      d[4] -= whole / k[6];
      d[5] = -whole / k[6];
    },
  };
}

/** Oxidation without growth, g N d-1: activity x fullness / yield. */
export function idling(
  activity: Activity,
  activityPartials: ActivityPartials,
): Pick<Process, 'rate' | 'partials'> {
  return {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
      (activity(v, at, k) * (v[at[4]] + v[at[5]]) * k[7]) / k[6],
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
      const whole = activityPartials(v, at, k, d);
      const perYield = k[7] / k[6];
      const full = (v[at[4]] + v[at[5]]) * perYield;
      for (let m = 0; m < 5; m++) d[m] *= full;
      d[4] += whole * perYield;
      d[5] = whole * perYield;
    },
  };
}

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
