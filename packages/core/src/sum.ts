/**
 * Sum with a running correction for what each addition rounds off (Neumaier 1974), so that a balance
 * of large flows shows its residual and not the order in which it was added up. Any NaN or infinity
 * among the values shows in the sum.
 * @param values what to add; an empty list sums to 0
 */
export function sum(values: Iterable<number>): number {
  let total = 0;
  let lost = 0;
  for (const value of values) {
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return Number.isFinite(total) ? total + lost : total;
}
