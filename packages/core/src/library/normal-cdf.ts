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
