type Rows = readonly (readonly number[])[];

const product = (a: Rows, b: Rows): number[][] =>
  a.map((row) => b[0].map((_, j) => row.reduce((sum, value, k) => sum + value * b[k][j], 0)));

/** exp(A) by scaling, a Taylor series of 24 terms, and squaring. */
function exponential(a: Rows): Rows {
  const norm = Math.hypot(...a.flat());
  const halvings = norm > 0 ? Math.max(0, Math.ceil(Math.log2(norm)) + 2) : 0;
  const scaled = a.map((row) => row.map((value) => value * 2 ** -halvings));
  const identity = a.map((row, i) => row.map((_, j) => (i === j ? 1 : 0)));
  let sum: Rows = identity;
  let term: Rows = identity;
  for (let n = 1; n <= 24; n++) {
    term = product(term, scaled).map((row) => row.map((value) => value / n));
    const next = term;
    sum = sum.map((row, i) => row.map((value, j) => value + next[i][j]));
  }
  for (let n = 0; n < halvings; n++) sum = product(sum, sum);
  return sum;
}

/** Exact solution at t of y' = A y + b, as the corner of a larger exponential. */
export function linearSolution(a: Rows, b: readonly number[], start: readonly number[], t: number): number[] {
  const rows = a.map((row, i) => [...row.map((value) => value * t), b[i] * t]);
  const whole = exponential([...rows, start.map(() => 0).concat(0)]);
  return product(
    whole,
    [...start, 1].map((value) => [value]),
  )
    .slice(0, start.length)
    .map(([value]) => value);
}
