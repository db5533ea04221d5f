import { Adder } from 'd3-array';

/**
 * Sum without rounding until the end (d3-array's Adder, after Shewchuk 1997), so that a balance of
 * large flows shows its residual and not the order in which it was added up. Any NaN or infinity
 * among the values shows in the sum.
 * @param values what to add; an empty list sums to 0
 */
export function sum(values: Iterable<number>): number {
  let exact: Adder | undefined;
  let [first, second, count, plain] = [0, 0, 0, 0];
  for (const value of values) {
    plain = count === 0 ? value : plain + value;
    // Of two values the plain sum is the exact one, rounded.
    if (count === 0) first = value;
    else if (count === 1) second = value;
    else exact = (exact ?? new Adder().add(first).add(second)).add(value);
    count++;
  }
  return exact !== undefined && Number.isFinite(plain) ? exact.valueOf() : plain;
}
