import type { Conditions } from '../process.js';
import type { Values } from '../../model/composition.js';

/**
 * Growth and nitrogen demand of one batch of a crop.
 * Growth, g dry d-1: G = g(T) W (1 - W/Wmax) f, f = (1 - Nmin W/N) / (1 - Nmin/Nc): logistic in
 * thermal time, slowed as crop nitrogen falls from the critical curve to its minimum (Droop form).
 * Critical nitrogen Nc = a w^-b with w in t/ha, flat below a plateau (Justes et al. 1994).
 * Demand, g N d-1: what keeps the crop on the curve while it grows, (1-b) Nc G, and the arrears
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

/** Critical nitrogen, g N per g dry, at a mass. */
function critical(mass: number, k: ArrayLike<number>): number {
  return k[2] * (Math.max(mass, k[4]) / k[6]) ** -k[3];
}

/** Growth, g dry d-1. 0 for a bare batch. */
export function cropGrowth(mass: number, nitrogen: number, k: ArrayLike<number>): number {
  return mass > 0 ? growthAt(critical(mass, k), mass, nitrogen, k) : 0;
}

function growthAt(wanted: number, mass: number, nitrogen: number, k: ArrayLike<number>): number {
  const room = k[0] * mass * (1 - mass / k[1]);
  return (room * (1 - (k[5] * mass) / nitrogen)) / (1 - k[5] / wanted);
}

/** Demand, g N d-1. 0 for a bare batch. */
export function cropDemand(mass: number, nitrogen: number, k: ArrayLike<number>): number {
  if (!(mass > 0)) return 0;
  const wanted = critical(mass, k);
  const slope = mass > k[4] ? 1 - k[3] : 1;
  const demand = slope * wanted * growthAt(wanted, mass, nitrogen, k) + (wanted * mass - nitrogen) * k[7];
  return demand > 0 ? demand : 0;
}

/** Partials of growth by mass and nitrogen into d[0], d[1]. Returns growth. */
export function cropGrowthPartials(mass: number, nitrogen: number, k: ArrayLike<number>, d: Float64Array): number {
  if (!(mass > 0)) {
    d[0] = 0;
    d[1] = 0;
    return 0;
  }
  const wanted = critical(mass, k);
  const wantedSlope = mass > k[4] ? (-k[3] * wanted) / mass : 0;
  const room = k[0] * mass * (1 - mass / k[1]);
  const status = 1 - (k[5] * mass) / nitrogen;
  const full = 1 - k[5] / wanted;
  const fullSlope = (k[5] / (wanted * wanted)) * wantedSlope;
  d[0] =
    (k[0] * (1 - (2 * mass) / k[1]) * status) / full -
    (room * k[5]) / (nitrogen * full) -
    (room * status * fullSlope) / (full * full);
  d[1] = (room * k[5] * mass) / (nitrogen * nitrogen * full);
  return (room * status) / full;
}

/** Partials of demand by mass and nitrogen into d[0], d[1]. Returns demand. */
export function cropDemandPartials(mass: number, nitrogen: number, k: ArrayLike<number>, d: Float64Array): number {
  const growth = cropGrowthPartials(mass, nitrogen, k, d);
  if (!(mass > 0)) return 0;
  const wanted = critical(mass, k);
  const above = mass > k[4];
  const wantedSlope = above ? (-k[3] * wanted) / mass : 0;
  const slope = above ? 1 - k[3] : 1;
  const demand = slope * wanted * growth + (wanted * mass - nitrogen) * k[7];
  if (!(demand > 0)) {
    d[0] = 0;
    d[1] = 0;
    return 0;
  }
  d[0] = slope * (wanted * d[0] + wantedSlope * growth) + (wantedSlope * mass + wanted) * k[7];
  d[1] = slope * wanted * d[1] - k[7];
  return demand;
}
