import { exp, log } from '../../base/elementary.js';
import type { Values } from '../../library/values.js';

/** Width, in pH, over which the flank bends into its ends: a join without a corner. */
const BEND = 0.1;

/** x where it is well above 0, 0 where it is well below, without a corner between: BEND ln(1 + e^(x / BEND)). */
function above(x: number): number {
  const steep = BEND * log(1 + exp(-Math.abs(x) / BEND));
  return x > 0 ? x + steep : steep;
}

/** d(above)/dx. */
function aboveSlope(x: number): number {
  return 1 / (1 + exp(-x / BEND));
}

/**
 * Flank of a film that has long grown in water of a pH: `distance` below it, but not above that of a fresh film and not
 * below the lowest; the two bends are smooth. All in pH.
 */
function flankAt(pH: number, fresh: number, distance: number, lowest: number): number {
  return lowest + above(fresh - lowest - above(fresh + distance - pH));
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

/** How fast the flank of a film moves towards that of its water, pH d-1. Variables: pH, flank. */
export const acclimation = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    k[0] * (flankAt(v[at[0]], k[1], k[2], k[3]) - v[at[1]]),
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const lack = k[1] + k[2] - v[at[0]];
    d[0] = k[0] * aboveSlope(k[1] - k[3] - above(lack)) * aboveSlope(lack);
    d[1] = -k[0];
  },
};
