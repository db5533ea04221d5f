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

const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

const top = (x: number): number =>
  polynomial(
    x,
    [
      3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
      221.213596169931, 220.206867912376,
    ],
  );

const bottom = (x: number): number =>
  polynomial(
    x,
    [
      8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
      637.333633378831, 793.826512519948, 440.413735824752,
    ],
  );

const fraction = (x: number): number => x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
