import { floorLog2, powerOfTwo } from '../../base/elementary.js';
import { sum } from '../../base/sum.js';

/** What one change has made of a difference. */
export interface ChangeShare {
  /** Its part: the mean of what it adds over every order in which the changes could be made. */
  readonly value: number;
  /** What it makes alone, with none of the others. */
  readonly alone: number;
}

/**
 * Splits what several changes have made together among them, interactions shared evenly (the value of Shapley, 1953: the
 * one split that sums to the whole, treats alike what does alike, and gives nothing to what does nothing).
 * @param values of each set of changes, by the bits of its number: bit i set where change i is made; 2^n of them
 * @returns for each change its part; the parts sum to the last value less the first, but for rounding
 * @throws RangeError where the values are not 2^n
 */
export function shapley(values: readonly number[]): readonly ChangeShare[] {
  const count = floorLog2(values.length);
  if (powerOfTwo(count) !== values.length)
    throw new RangeError(`${values.length} values are not those of every set of changes`);
  const sizeOf = (set: number): number => set.toString(2).replaceAll('0', '').length;
  const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
  return Array.from({ length: count }, (_, i) => {
    const bit = 1 << i;
    const terms = values.flatMap((value, set) => {
      if ((set & bit) !== 0) return [];
      const size = sizeOf(set);
      const weight = (factorial(size) * factorial(count - size - 1)) / factorial(count);
      return [weight * (values[set | bit] - value)];
    });
    return { value: sum(terms), alone: values[bit] - values[0] };
  });
}
