/** Coefficients of P. J. Acklam's rational approximation (2003), relative error below 1.2e-9. */
const centreTop = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2, -3.066479806614716e1,
  2.506628277459239,
];
const centreBottom = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1,
  1,
];
const tailTop = [
  -7.784894002430293e-3, -3.223964580411278e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
];
const tailBottom = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1];

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

/** The standard normal deviate below which a share u of draws lies; -Infinity at 0, Infinity at 1. */
export function normalQuantile(u: number): number {
  if (u <= 0) return -Infinity;
  if (u > 0.5) return -normalQuantile(1 - u);
  if (u < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(u));
    return polynomial(tailTop, q) / polynomial(tailBottom, q);
  }
  const q = u - 0.5;
  const r = q * q;
  return (polynomial(centreTop, r) * q) / polynomial(centreBottom, r);
}
