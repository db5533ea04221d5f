import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupProducts, SumsOfProducts } from '../../../../packages/core/src/solve/sums-of-products.js';

const value = fc.integer({ min: -9, max: 9 });
const list = (count: number, each = value): fc.Arbitrary<number[]> =>
  fc.array(each, { minLength: count, maxLength: count });
const LEFT = 4;
const RIGHT = 5;

/** Products at places drawn at random, with what they are made of. */
const cases = fc.record({
  count: fc.integer({ min: 1, max: 6 }),
  products: fc.array(fc.tuple(fc.nat(5), fc.nat(LEFT - 1), fc.nat(RIGHT - 1)), { maxLength: 20 }),
  a: list(LEFT),
  b: list(RIGHT),
  before: list(8),
});

describe('groupProducts', () => {
  it('keeps the order of the products of a sum, and leaves sums without any empty', () => {
    const grouped = groupProducts([2, 0, 2, 2], [10, 11, 12, 13], [20, 21, 22, 23], 4);
    expect([...grouped.start]).toEqual([0, 1, 1, 4, 4]);
    expect([...grouped.left]).toEqual([11, 10, 12, 13]);
    expect([...grouped.right]).toEqual([21, 20, 22, 23]);
  });
});

describe('SumsOfProducts', () => {
  it('sums what a plain loop over the products sums, and leaves what lies beyond the sums', () => {
    fc.assert(
      fc.property(cases, ({ count, products, a, b, before }) => {
        const inside = products.filter(([target]) => target < count);
        const [target, left, right] = [0, 1, 2].map((part) => inside.map((product) => product[part]));
        const places = groupProducts(target, left, right, count);
        const sums = Array.from({ length: count }, () => 0);
        for (const [t, l, r] of inside) sums[t] += a[l] * b[r];
        const wanted = {
          set: sums,
          add: sums.map((sum, i) => before[i] + sum),
          negate: sums.map((sum) => 0 - sum),
        };
        for (const mode of ['set', 'add', 'negate'] as const) {
          const out = Float64Array.from(before);
          new SumsOfProducts(places, mode).apply(Float64Array.from(a), Float64Array.from(b), out);
          // Adding 0 turns -0 into 0.
          expect(Array.from(out, (each) => each + 0)).toEqual([...wanted[mode], ...before.slice(count)]);
        }
      }),
    );
  });
});
