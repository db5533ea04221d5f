import { exp, log, pow } from '../../base/elementary.js';
/**
 * Rate laws shared by processes: pure functions and their derivatives.
 * Below zero a Monod term goes on as the straight line s/K: a value that rounding has put below
 * zero is then drawn back, and the derivative is continuous.
 */

/** Monod term s/(K+s). Monod 1949. */
export function monod(s: number, k: number): number {
  return s > 0 ? s / (k + s) : s / k;
}

/** d(monod)/ds. */
export function monodSlope(s: number, k: number): number {
  return s > 0 ? k / ((k + s) * (k + s)) : 1 / k;
}

/** Non-competitive inhibition K/(K+s); 1 below zero. */
export function inhibition(s: number, k: number): number {
  return s > 0 ? k / (k + s) : 1;
}

/** d(inhibition)/ds. */
export function inhibitionSlope(s: number, k: number): number {
  return s > 0 ? -k / ((k + s) * (k + s)) : 0;
}

/** Share of a surface that others leave bare: 1 with none of them, 1 - most/2 at `half`, 1 - most with many. */
export function bareShare(covering: number, half: number, most: number): number {
  return covering > 0 ? (half + (1 - most) * covering) / (half + covering) : 1;
}

/** d(bareShare)/d(covering). */
export function bareShareSlope(covering: number, half: number, most: number): number {
  return covering > 0 ? (-most * half) / ((half + covering) * (half + covering)) : 0;
}

/** Bell of an enzyme with two ionisations, 1/(1 + 10^(low-pH) + 10^(pH-high)). Michaelis & Davidsohn 1911. */
export function bell(pH: number, low: number, high: number): number {
  return 1 / (1 + exp(Math.LN10 * (low - pH)) + exp(Math.LN10 * (pH - high)));
}

/** d(bell)/dpH. */
export function bellSlope(pH: number, low: number, high: number): number {
  const acid = exp(Math.LN10 * (low - pH));
  const base = exp(Math.LN10 * (pH - high));
  const sum = 1 + acid + base;
  return (Math.LN10 * (acid - base)) / (sum * sum);
}

/** d(bell)/d(low). */
export function bellByLow(pH: number, low: number, high: number): number {
  const acid = exp(Math.LN10 * (low - pH));
  const sum = 1 + acid + exp(Math.LN10 * (pH - high));
  return (-Math.LN10 * acid) / (sum * sum);
}

/** Temperature factor theta^(T-20). Arrhenius in the form of sanitary engineering. */
export function arrhenius(theta: number, temperature: number, reference = 20): number {
  return pow(theta, temperature - reference);
}

/** Width, in pH, over which a line bends into its end: a join without a corner. */
const BEND = 0.1;

/** x where it is well above 0, 0 where it is well below, without a corner between: BEND ln(1 + e^(x / BEND)). x in pH. */
export function above(x: number): number {
  const steep = BEND * log(1 + exp(-Math.abs(x) / BEND));
  return x > 0 ? x + steep : steep;
}

/** d(above)/dx. */
export function aboveSlope(x: number): number {
  return 1 / (1 + exp(-x / BEND));
}
