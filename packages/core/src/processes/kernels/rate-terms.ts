import { exp, pow } from '../../base/elementary.js';
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
