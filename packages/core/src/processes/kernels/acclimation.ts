import { exp, log } from '../../base/elementary.js';
import { pHOf } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import { HYDROGEN_AFTER_PH, type Kernel } from './kernel.js';
import { BEND } from './rate-terms.js';

/** Share of the way from its lowest to a fresh film, 0..1, that water of a pH lets the flank be: half at fresh + distance. */
const freed = (pH: number, fresh: number, distance: number): number =>
  1 / (1 + exp((fresh + distance - pH) / BEND));

/** What the lowest flank leaves in the same measure. */
const least = (fresh: number, lowest: number): number => exp((lowest - fresh) / BEND);

/**
 * Flank of a film that has long grown in water of a pH: `distance` below it, but not above that of a fresh film and not
 * below the lowest; the two bends are smooth: two joins of BEND ln(1 + e^(x / BEND)), one in the other, are one logarithm.
 * All in pH.
 */
function flankAt(pH: number, fresh: number, distance: number, lowest: number): number {
  return fresh + BEND * log(least(fresh, lowest) + freed(pH, fresh, distance));
}

/** Flank of a film that has long grown in water of a pH. */
export function flankGrownAt(values: Values, pH: number): number {
  const [, fresh, distance, lowest] = acclimationCoefficients(values);
  return flankAt(pH, fresh, distance, lowest);
}

/** [1/time constant, flank of a fresh film, distance below the water, lowest flank]. */
export function acclimationCoefficients(values: Values): readonly number[] {
  return [
    1 / values.value('nitrifier.acclimation-time'),
    values.value('nitrifier.flank-fresh'),
    values.value('nitrifier.flank-distance'),
    values.value('nitrifier.flank-lowest'),
  ];
}

/** Coefficients of acclimation. */
const SIZE = 4;

const acclimationKernel: Kernel = {
  name: 'acclimation',
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += SIZE) {
      const pH = pHOf(v[at[n] + HYDROGEN_AFTER_PH]);
      r[row + i] = k[o] * (flankAt(pH, k[o + 1], k[o + 2], k[o + 3]) - v[at[n + 1]]);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += SIZE) {
      const pH = pHOf(v[at[n] + HYDROGEN_AFTER_PH]);
      const free = freed(pH, k[o + 1], k[o + 2]);
      d[n] = (k[o] * (free * (1 - free))) / (least(k[o + 1], k[o + 3]) + free);
      d[n + 1] = -k[o];
    }
  },
};

/** How fast the flank of a film moves towards that of its water, pH d-1. Variables: pH, flank. */
export const acclimation = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * (flankAt(v[at[0]], k[1], k[2], k[3]) - v[at[1]]),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const free = freed(v[at[0]], k[1], k[2]);
    d[0] = (k[0] * (free * (1 - free))) / (least(k[1], k[3]) + free);
    d[1] = -k[0];
  },
  kernel: acclimationKernel,
};
