/**
 * Share of standard normal draws below x, to about 1e-16: the Taylor series about 0 of G. Marsaglia (Evaluating the
 * normal distribution, J. Stat. Softw. 11(4), 2004); 0 and 1 beyond 8.5, where the rest is smaller than that.
 */
export function normalCdf(x: number): number {
  if (x > 8.5) return 1;
  if (x < -8.5) return 0;
  let sum = x;
  let term = x;
  for (let i = 3; sum + term !== sum; i += 2) {
    term *= (x * x) / i;
    sum += term;
  }
  return 0.5 + sum * Math.exp(-0.5 * x * x - 0.5 * Math.log(2 * Math.PI));
}

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

/**
 * Share of standard normal draws below z: G. West, "Better approximations to cumulative normal functions"
 * (2005), after J. F. Hart's rational approximation; about 15 digits.
 */
export function normalProbability(z: number): number {
  const x = Math.abs(z);
  if (x > 37) return z > 0 ? 1 : 0;
  const density = Math.exp((-x * x) / 2);
  const tail =
    x < 7.07106781186547 ? (density * top(x)) / bottom(x) : density / (fraction(x) * 2.506628274631);
  return z > 0 ? 1 - tail : tail;
}

const polynomialAt = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

const top = (x: number): number =>
  polynomialAt(
    x,
    [
      3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
      221.213596169931, 220.206867912376,
    ],
  );

const bottom = (x: number): number =>
  polynomialAt(
    x,
    [
      8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
      637.333633378831, 793.826512519948, 440.413735824752,
    ],
  );

const fraction = (x: number): number => x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
