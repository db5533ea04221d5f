import type { i32 } from '../../base/whole.js';
import { exp, expm1, log } from '../../base/elementary.js';
import { hydrogenAt, pHOf } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import { HYDROGEN_AFTER_PH, type Kernel, type Sites } from './kernel.js';
import { monod, monodSlope } from './rate-terms.js';
import {
  acidityCoefficients,
  ammoniumLeft,
  ammoniumLeftSlope,
  leftByAcidity,
  leftByAciditySlope,
} from './root-acidity.js';

/**
 * Growth and nitrogen demand of one batch of a crop.
 * Growth, g dry d-1: G = c (1 - exp(-r W / c)) f: young plants grow by r, a closed canopy by the light that falls on
 * it, c (Goudriaan & Monteith 1990). r and c rise with warmth above the base temperature up to the optimum; r rises with
 * light as Bruggink (1987) found, half of it at one light for all crops.
 * Salt takes a share of both, s in all, beyond a threshold of conductivity (Maas & Hoffman 1977).
 * Water that is too acid or not acid enough takes a share of growth, and acid water one of the uptake of ammonium
 * (root-acidity.ts).
 * f = (1 - n Nc W/N) / (1 - n) slows growth as crop nitrogen falls from the critical curve to a share n of it (Droop form).
 * Critical nitrogen Nc = a w^-b with w in t/ha, flat below a plateau p (Justes et al. 1994), the two
 * joined without a corner: a (w^4 + p^4)^(-b/4). A corner would cost the integrator a dozen steps a
 * crop; the join is 1 % below the curve at 1.5 p and 4 % or less at p.
 * A share b of G goes to fruit, once a crop bears: it takes its fixed nitrogen from the plant and catches no light.
 * Demand, g N d-1: what keeps the plant on the curve while it grows, d(Nc W)/dW (1 - b) G, that of its fruit, and the arrears
 * (Nc W - N) made good in a recovery time; never below 0.
 */

/**
 * Share of growth that salt leaves, 0..1: less by a slope for each dS/m above a threshold. Both are written for the extract of a
 * saturated soil, which is thinner than the water that roots stand in; conductivity follows from ionic strength.
 */
function leftBySalt(values: Values, ionic: number): number {
  const conductivity = ionic / values.value('water.ionic-per-conductivity');
  const extract = conductivity / values.value('crop.salt-dilution');
  const over = Math.max(0, extract - values.value('crop.salt-threshold'));
  return Math.max(0, 1 - values.value('crop.salt-slope') * over);
}

/**
 * [r 1/d at T, c g/d at T and light, a g/g, b, plateau g, n, g per t/ha, 1/recovery, b, fruit g N/g, pH up to which growth is
 * full, what each further pH takes, 1 over the hydrogen ions that halve it].
 */
export function cropCoefficients(values: Values, at: Conditions): readonly number[] {
  const base = values.value('crop.base-temperature');
  const best = values.value('crop.optimum-temperature');
  const warmth = Math.max(0, Math.min(at.air, best) - base);
  const sound = warmth * leftBySalt(values, at.ionic);
  const gramsPerTonneHectare = 100 * at.area;
  return [
    (values.value('crop.growth') * sound * at.light) / (values.value('crop.k-light') + at.light),
    (values.value('crop.light-use') * at.light * at.area * sound) / (best - base),
    values.value('crop.nitrogen-a'),
    values.value('crop.nitrogen-b'),
    values.value('crop.nitrogen-plateau') * gramsPerTonneHectare,
    values.value('crop.nitrogen-least'),
    gramsPerTonneHectare,
    1 / values.value('crop.recovery-time'),
    at.bearing,
    values.value('crop.fruit-nitrogen'),
    ...acidityCoefficients(values),
  ];
}

/** Critical nitrogen, g N per g dry, at a mass. Here and below the coefficients begin at k[o]. */
export function critical(mass: number, k: ArrayLike<number>, o: i32): number {
  const w = mass / k[o + 6];
  const p = k[o + 4] / k[o + 6];
  return k[o + 2] * exp(-0.25 * k[o + 3] * log(w * w * w * w + p * p * p * p));
}

/** -d ln Nc / d ln W: 0 far below the plateau, b far above. */
function fall(mass: number, k: ArrayLike<number>, o: i32): number {
  const ratio = k[o + 4] / mass;
  return k[o + 3] / (1 + ratio * ratio * ratio * ratio);
}

/** Growth of plant and fruit, g dry d-1. 0 for a bare batch. */
export function cropGrowth(mass: number, nitrogen: number, pH: number, k: ArrayLike<number>): number {
  return mass > 0 ? leftByPh(pH, k, 0) * growthAt(critical(mass, k, 0), mass, nitrogen, k, 0) : 0;
}

/** Share of growth that the pH of the water leaves. */
export function leftByPh(pH: number, k: ArrayLike<number>, o: i32): number {
  return leftByAcidity(pH, hydrogenAt(pH), k, o + 10);
}

/** Share of growth that goes to fruit. */
export function fruitShare(k: ArrayLike<number>): number {
  return k[8];
}

/** Partials of a share of growth by mass, nitrogen and pH into d[0], d[1], d[2]. */
export function sharePartials(
  share: number,
  mass: number,
  nitrogen: number,
  pH: number,
  k: ArrayLike<number>,
  d: Float64Array,
): void {
  cropGrowthPartials(mass, nitrogen, pH, k, d);
  for (let m = 0; m < 3; m++) d[m] *= share;
}

/** Growth with nitrogen to spare, g dry d-1: 0 in the dark and in the cold. */
function freeGrowth(mass: number, k: ArrayLike<number>, o: i32): number {
  return k[o + 1] > 0 ? -k[o + 1] * expm1((-k[o] * mass) / k[o + 1]) : 0;
}

/**
 * Mass after so many days of free growth under one light and warmth, g dry: the exact solution of W' = c (1 - exp(-r W / c)).
 */
export function grownFrom(mass: number, days: number, k: ArrayLike<number>): number {
  const [r, c] = [k[0], k[1]];
  if (!(c > 0)) return mass;
  // ln(1 + (e^x - 1) e^y) with x = r W / c, y = r t, without overflow.
  const x = (r * mass) / c;
  const late = r * days;
  return (c / r) * (x + late + log(exp(-x - late) - expm1(-x)));
}

/** Growth with the critical nitrogen at this mass already known; none at or below the least nitrogen. */
function growthAt(wanted: number, mass: number, nitrogen: number, k: ArrayLike<number>, o: i32): number {
  const least = k[o + 5] * wanted * mass;
  return nitrogen > least ? (freeGrowth(mass, k, o) * (1 - least / nitrogen)) / (1 - k[o + 5]) : 0;
}

/** Demand, g N d-1. 0 for a bare batch. */
export function cropDemand(mass: number, nitrogen: number, pH: number, k: ArrayLike<number>): number {
  if (!(mass > 0)) return 0;
  const wanted = critical(mass, k, 0);
  const growth = leftByPh(pH, k, 0) * growthAt(wanted, mass, nitrogen, k, 0);
  return demandAt(wanted, growth, mass, nitrogen, k, 0);
}

/** Demand with critical nitrogen and growth already known. */
function demandAt(
  wanted: number,
  growth: number,
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  o: i32,
): number {
  const perGrowth = (1 - k[o + 8]) * (1 - fall(mass, k, o)) * wanted + k[o + 8] * k[o + 9];
  const demand = perGrowth * growth + (wanted * mass - nitrogen) * k[o + 7];
  return demand > 0 ? demand : 0;
}

/** Partials of growth by mass, nitrogen and pH into d[0], d[1], d[2]. Returns growth. */
function cropGrowthPartials(
  mass: number,
  nitrogen: number,
  pH: number,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  if (mass > 0) return growthPartialsAt(critical(mass, k, 0), mass, nitrogen, pH, hydrogenAt(pH), k, 0, d);
  d[0] = 0;
  d[1] = 0;
  d[2] = 0;
  return 0;
}

/** The same with the critical nitrogen known, of a batch with mass; its coefficients begin at k[o]. */
function growthPartialsAt(
  wanted: number,
  mass: number,
  nitrogen: number,
  pH: number,
  h: number,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): number {
  const least = k[o + 5] * wanted;
  if (!(nitrogen > least * mass)) {
    d[0] = 0;
    d[1] = 0;
    d[2] = 0;
    return 0;
  }
  const left = leftByAcidity(pH, h, k, o + 10);
  const full = 1 - k[o + 5];
  const free = freeGrowth(mass, k, o);
  const freeSlope = k[o + 1] > 0 ? k[o] * exp((-k[o] * mass) / k[o + 1]) : 0;
  const status = (1 - (least * mass) / nitrogen) / full;
  d[0] = left * (freeSlope * status - (free * least * (1 - fall(mass, k, o))) / (nitrogen * full));
  d[1] = (left * free * least * mass) / (nitrogen * nitrogen * full);
  d[2] = leftByAciditySlope(pH, h, k, o + 10, left) * free * status;
  return left * free * status;
}

/** Partials of demand by mass, nitrogen and pH into d[0], d[1], d[2]. Returns demand. */
export function cropDemandPartials(
  mass: number,
  nitrogen: number,
  pH: number,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const growth = cropGrowthPartials(mass, nitrogen, pH, k, d);
  return mass > 0 ? demandPartialsAt(critical(mass, k, 0), growth, mass, nitrogen, k, 0, d) : 0;
}

/** The same with critical nitrogen and growth known, of a batch with mass; d holds the partials of growth before. */
function demandPartialsAt(
  wanted: number,
  growth: number,
  mass: number,
  nitrogen: number,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): number {
  const falling = fall(mass, k, o);
  const wantedSlope = (-falling * wanted) / mass;
  const slope = 1 - falling;
  // d(fall)/dW = 4 fall (1 - fall/b) / W.
  const slopeSlope = (-4 * falling * (1 - falling / k[o + 3])) / mass;
  const plant = 1 - k[o + 8];
  const perGrowth = plant * slope * wanted + k[o + 8] * k[o + 9];
  const demand = perGrowth * growth + (wanted * mass - nitrogen) * k[o + 7];
  if (!(demand > 0)) {
    d[0] = 0;
    d[1] = 0;
    d[2] = 0;
    return 0;
  }
  d[0] =
    perGrowth * d[0] +
    plant * (slope * wantedSlope + slopeSlope * wanted) * growth +
    (wantedSlope * mass + wanted) * k[o + 7];
  d[1] = perGrowth * d[1] - k[o + 7];
  d[2] *= perGrowth;
  return demand;
}

/** Partials by mass, nitrogen and pH, of one batch at a time. */
const three = new Float64Array(3);

/**
 * Growth and the uptake of nitrate, ammonium and calcium of every batch, handed over in this order: demand and its
 * critical curve are worked out once. Coefficients as in the three processes.
 */
export const cropKernel: Kernel = {
  name: 'crop',
  rates: ([growth, nitrate, tan, calcium], v, r) => {
    const kn = nitrate.k;
    const kt = tan.k;
    const kc = calcium.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 5 * i;
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
      const h = v[nitrate.at[n + 2] + HYDROGEN_AFTER_PH];
      const left = leftByAcidity(pHOf(h), h, growth.k, g + 10);
      const grown = left * growthAt(wanted, mass, nitrogen, growth.k, g);
      const demand = demandAt(wanted, grown, mass, nitrogen, growth.k, g);
      const ammonium = v[nitrate.at[n + 4]];
      const o = i * nitrate.size;
      const p = i * tan.size;
      r[growth.row + i] = (1 - growth.k[g + 8]) * grown;
      const q = i * calcium.size;
      const share = kt[p + 14] * ammoniumLeft(h, kt[p + 15]) * monod(ammonium, kt[p + 13]);
      const ofNitrate = demand * monod(v[nitrate.at[n + 3]], kn[o + 13]) * (1 - share);
      const ofTan = demand * share;
      r[nitrate.row + i] = ofNitrate;
      r[tan.row + i] = ofTan;
      r[calcium.row + i] = kc[q + 17] * (ofNitrate + ofTan) * monod(v[calcium.at[6 * i + 5]], kc[q + 18]);
    }
  },
  partials: ([growth, nitrate, tan, calcium], v) => {
    const kn = nitrate.k;
    const kt = tan.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 5 * i;
      const mass = v[nitrate.at[n]];
      const nitrogen = v[nitrate.at[n + 1]];
      const g = i * growth.size;
      const h = v[nitrate.at[n + 2] + HYDROGEN_AFTER_PH];
      let demand = 0;
      three[0] = 0;
      three[1] = 0;
      three[2] = 0;
      if (mass > 0) {
        const wanted = critical(mass, growth.k, g);
        const grown = growthPartialsAt(wanted, mass, nitrogen, pHOf(h), h, growth.k, g, three);
        for (let m = 0; m < 3; m++) growth.d[3 * i + m] = (1 - growth.k[g + 8]) * three[m];
        demand = demandPartialsAt(wanted, grown, mass, nitrogen, growth.k, g, three);
      } else for (let m = 0; m < 3; m++) growth.d[3 * i + m] = 0;
      const ammonium = v[nitrate.at[n + 4]];
      const o = i * nitrate.size;
      const taken = monod(v[nitrate.at[n + 3]], kn[o + 13]);
      const p = i * tan.size;
      const spared = ammoniumLeft(h, kt[p + 15]);
      const share = kt[p + 14] * spared * monod(ammonium, kt[p + 13]);
      const shareByPh = kt[p + 14] * ammoniumLeftSlope(spared) * monod(ammonium, kt[p + 13]);
      const shareByTan = kt[p + 14] * spared * monodSlope(ammonium, kt[p + 13]);
      for (let m = 0; m < 3; m++) nitrate.d[n + m] = three[m] * taken * (1 - share);
      nitrate.d[n + 2] -= demand * taken * shareByPh;
      nitrate.d[n + 3] = demand * monodSlope(v[nitrate.at[n + 3]], kn[o + 13]) * (1 - share);
      nitrate.d[n + 4] = -demand * taken * shareByTan;
      for (let m = 0; m < 3; m++) tan.d[4 * i + m] = three[m] * share;
      tan.d[4 * i + 2] += demand * shareByPh;
      tan.d[4 * i + 3] = demand * shareByTan;
      calciumPartialsAt(calcium, i, v, nitrate.d, tan.d, demand * (taken * (1 - share) + share));
    }
  },
};

/** Partials of calcium uptake of batch i, with those of the uptake of nitrate and ammonium and both together known. */
function calciumPartialsAt(
  { at, k, d, size }: Sites,
  i: i32,
  v: Float64Array,
  nitrate: Float64Array,
  tan: Float64Array,
  taken: number,
): void {
  const m = 6 * i;
  const n = 5 * i;
  const t = 4 * i;
  const o = i * size;
  const share = k[o + 17] * monod(v[at[m + 5]], k[o + 18]);
  for (let j = 0; j < 3; j++) d[m + j] = (nitrate[n + j] + tan[t + j]) * share;
  d[m + 3] = nitrate[n + 3] * share;
  d[m + 4] = (nitrate[n + 4] + tan[t + 3]) * share;
  d[m + 5] = taken * k[o + 17] * monodSlope(v[at[m + 5]], k[o + 18]);
}
