import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import type { Kernel, Sites } from './kernel.js';
import { monod, monodSlope } from './rate-terms.js';

/**
 * Growth and nitrogen demand of one batch of a crop.
 * Growth, g dry d-1: G = g(T) W (1 - W/Wmax) f, f = (1 - Nmin W/N) / (1 - Nmin/Nc): logistic in
 * thermal time, slowed as crop nitrogen falls from the critical curve to its minimum (Droop form).
 * Critical nitrogen Nc = a w^-b with w in t/ha, flat below a plateau p (Justes et al. 1994), the two
 * joined without a corner: a (w^4 + p^4)^(-b/4). A corner would cost the integrator a dozen steps a
 * crop; the join is 1 % below the curve at 1.5 p and 4 % or less at p.
 * Demand, g N d-1: what keeps the crop on the curve while it grows, d(Nc W)/dW G, and the arrears
 * (Nc W - N) made good in a recovery time; never below 0.
 */

/** [growth 1/d at T, final g, a g/g, b, plateau g, minimum g/g, g per t/ha, 1/recovery]. */
export function cropCoefficients(values: Values, at: Conditions): readonly number[] {
  const base = values.value('crop.base-temperature');
  const warmth = Math.max(0, Math.min(at.air, values.value('crop.optimum-temperature')) - base);
  const gramsPerTonneHectare = 100 * at.area;
  return [
    values.value('crop.growth') * warmth,
    values.value('crop.final-mass') * at.area,
    values.value('crop.nitrogen-a'),
    values.value('crop.nitrogen-b'),
    values.value('crop.nitrogen-plateau') * gramsPerTonneHectare,
    values.value('crop.nitrogen-minimum'),
    gramsPerTonneHectare,
    1 / values.value('crop.recovery-time'),
  ];
}

/** Critical nitrogen, g N per g dry, at a mass. Here and below the coefficients begin at k[o]. */
export function critical(mass: number, k: ArrayLike<number>, o: number): number {
  const w = mass / k[o + 6];
  const p = k[o + 4] / k[o + 6];
  return k[o + 2] * Math.exp(-0.25 * k[o + 3] * Math.log(w * w * w * w + p * p * p * p));
}

/** -d ln Nc / d ln W: 0 far below the plateau, b far above. */
function fall(mass: number, k: ArrayLike<number>, o: number): number {
  const ratio = k[o + 4] / mass;
  return k[o + 3] / (1 + ratio * ratio * ratio * ratio);
}

/** Growth, g dry d-1. 0 for a bare batch. */
export function cropGrowth(mass: number, nitrogen: number, k: ArrayLike<number>): number {
  return mass > 0 ? growthAt(critical(mass, k, 0), mass, nitrogen, k, 0) : 0;
}

/** Growth with the critical nitrogen at this mass already known. */
function growthAt(wanted: number, mass: number, nitrogen: number, k: ArrayLike<number>, o: number): number {
  const room = k[o] * mass * (1 - mass / k[o + 1]);
  return (room * (1 - (k[o + 5] * mass) / nitrogen)) / (1 - k[o + 5] / wanted);
}

/** Demand, g N d-1. 0 for a bare batch. */
export function cropDemand(mass: number, nitrogen: number, k: ArrayLike<number>): number {
  if (!(mass > 0)) return 0;
  const wanted = critical(mass, k, 0);
  return demandAt(wanted, growthAt(wanted, mass, nitrogen, k, 0), mass, nitrogen, k, 0);
}

/** Demand with critical nitrogen and growth already known. */
function demandAt(
  wanted: number,
  growth: number,
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  o: number,
): number {
  const demand = (1 - fall(mass, k, o)) * wanted * growth + (wanted * mass - nitrogen) * k[o + 7];
  return demand > 0 ? demand : 0;
}

/** Partials of growth by mass and nitrogen into d[0], d[1]. Returns growth. */
export function cropGrowthPartials(
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  if (mass > 0) return growthPartialsAt(critical(mass, k, 0), mass, nitrogen, k, 0, d);
  d[0] = 0;
  d[1] = 0;
  return 0;
}

/** The same with the critical nitrogen known, of a batch with mass; its coefficients begin at k[o]. */
function growthPartialsAt(
  wanted: number,
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  o: number,
  d: Float64Array,
): number {
  const wantedSlope = (-fall(mass, k, o) * wanted) / mass;
  const room = k[o] * mass * (1 - mass / k[o + 1]);
  const status = 1 - (k[o + 5] * mass) / nitrogen;
  const full = 1 - k[o + 5] / wanted;
  const fullSlope = (k[o + 5] / (wanted * wanted)) * wantedSlope;
  d[0] =
    (k[o] * (1 - (2 * mass) / k[o + 1]) * status) / full -
    (room * k[o + 5]) / (nitrogen * full) -
    (room * status * fullSlope) / (full * full);
  d[1] = (room * k[o + 5] * mass) / (nitrogen * nitrogen * full);
  return (room * status) / full;
}

/** Partials of demand by mass and nitrogen into d[0], d[1]. Returns demand. */
export function cropDemandPartials(
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const growth = cropGrowthPartials(mass, nitrogen, k, d);
  return mass > 0 ? demandPartialsAt(critical(mass, k, 0), growth, mass, nitrogen, k, 0, d) : 0;
}

/** The same with critical nitrogen and growth known, of a batch with mass; d holds the partials of growth before. */
function demandPartialsAt(
  wanted: number,
  growth: number,
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  o: number,
  d: Float64Array,
): number {
  const falling = fall(mass, k, o);
  const wantedSlope = (-falling * wanted) / mass;
  const slope = 1 - falling;
  // d(fall)/dW = 4 fall (1 - fall/b) / W.
  const slopeSlope = (-4 * falling * (1 - falling / k[o + 3])) / mass;
  const demand = slope * wanted * growth + (wanted * mass - nitrogen) * k[o + 7];
  if (!(demand > 0)) {
    d[0] = 0;
    d[1] = 0;
    return 0;
  }
  d[0] =
    slope * (wanted * d[0] + wantedSlope * growth) +
    slopeSlope * wanted * growth +
    (wantedSlope * mass + wanted) * k[o + 7];
  d[1] = slope * wanted * d[1] - k[o + 7];
  return demand;
}

/**
 * Growth and the uptake of nitrate, ammonium and calcium of every batch, handed over in this order: demand and its
 * critical curve are worked out once. Coefficients as in the three processes.
 */
export const cropKernel: Kernel = {
  rates: ([growth, nitrate, tan, calcium], v, r) => {
    const kn = nitrate.k;
    const kt = tan.k;
    const kc = calcium.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 4 * i;
      const mass = v[nitrate.at[n]];
      if (!(mass > 0)) {
        r[growth.row + i] = 0;
        r[nitrate.row + i] = 0;
        r[tan.row + i] = 0;
        r[calcium.row + i] = 0;
        continue;
      }
      const nitrogen = v[nitrate.at[n + 1]];
      const g = i * growth.size;
      const wanted = critical(mass, growth.k, g);
      const grown = growthAt(wanted, mass, nitrogen, growth.k, g);
      const demand = demandAt(wanted, grown, mass, nitrogen, growth.k, g);
      const ammonium = v[nitrate.at[n + 3]];
      const o = i * nitrate.size;
      const p = i * tan.size;
      r[growth.row + i] = grown;
      const q = i * calcium.size;
      const ofNitrate =
        demand * monod(v[nitrate.at[n + 2]], kn[o + 8]) * (1 - kn[o + 10] * monod(ammonium, kn[o + 9]));
      const ofTan = demand * kt[p + 9] * monod(ammonium, kt[p + 8]);
      r[nitrate.row + i] = ofNitrate;
      r[tan.row + i] = ofTan;
      r[calcium.row + i] = kc[q + 11] * (ofNitrate + ofTan) * monod(v[calcium.at[5 * i + 4]], kc[q + 12]);
    }
  },
  partials: ([growth, nitrate, tan, calcium], v) => {
    const pair = new Float64Array(2);
    const kn = nitrate.k;
    const kt = tan.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 4 * i;
      const mass = v[nitrate.at[n]];
      const nitrogen = v[nitrate.at[n + 1]];
      const g = i * growth.size;
      let demand = 0;
      pair.fill(0);
      if (mass > 0) {
        const wanted = critical(mass, growth.k, g);
        const grown = growthPartialsAt(wanted, mass, nitrogen, growth.k, g, pair);
        growth.d.set(pair, 2 * i);
        demand = demandPartialsAt(wanted, grown, mass, nitrogen, growth.k, g, pair);
      } else growth.d.set(pair, 2 * i);
      const ammonium = v[nitrate.at[n + 3]];
      const o = i * nitrate.size;
      const taken = monod(v[nitrate.at[n + 2]], kn[o + 8]);
      const left = 1 - kn[o + 10] * monod(ammonium, kn[o + 9]);
      nitrate.d[n] = pair[0] * taken * left;
      nitrate.d[n + 1] = pair[1] * taken * left;
      nitrate.d[n + 2] = demand * monodSlope(v[nitrate.at[n + 2]], kn[o + 8]) * left;
      nitrate.d[n + 3] = -demand * taken * kn[o + 10] * monodSlope(ammonium, kn[o + 9]);
      const p = i * tan.size;
      const share = kt[p + 9] * monod(ammonium, kt[p + 8]);
      tan.d[3 * i] = pair[0] * share;
      tan.d[3 * i + 1] = pair[1] * share;
      tan.d[3 * i + 2] = demand * kt[p + 9] * monodSlope(ammonium, kt[p + 8]);
      calciumPartialsAt(calcium, i, v, nitrate.d, tan.d, demand * (taken * left + share));
    }
  },
};

/** Partials of calcium uptake of batch i, with those of the uptake of nitrate and ammonium and both together known. */
function calciumPartialsAt(
  { at, k, d, size }: Sites,
  i: number,
  v: Float64Array,
  nitrate: Float64Array,
  tan: Float64Array,
  taken: number,
): void {
  const m = 5 * i;
  const n = 4 * i;
  const t = 3 * i;
  const o = i * size;
  const share = k[o + 11] * monod(v[at[m + 4]], k[o + 12]);
  d[m] = (nitrate[n] + tan[t]) * share;
  d[m + 1] = (nitrate[n + 1] + tan[t + 1]) * share;
  d[m + 2] = nitrate[n + 2] * share;
  d[m + 3] = (nitrate[n + 3] + tan[t + 2]) * share;
  d[m + 4] = taken * k[o + 11] * monodSlope(v[at[m + 4]], k[o + 12]);
}
