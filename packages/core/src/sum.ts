import { Adder } from 'd3-array';

/**
 * Sum without rounding until the end (d3-array's Adder, after Shewchuk 1997), so that a balance of
 * large flows shows its residual and not the order in which it was added up. Any NaN or infinity
 * among the values shows in the sum.
 * @param values what to add; an empty list sums to 0
 */
export function sum(values: Iterable<number>): number {
  const exact = new Adder();
  let plain = 0;
  for (const value of values) {
    exact.add(value);
    plain += value;
  }
  return Number.isFinite(plain) ? exact.valueOf() : plain;
}
