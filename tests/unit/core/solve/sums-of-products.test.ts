import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
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

afterEach(() => vi.restoreAllMocks());

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

  it('goes on so when it has code of its own: ten sums of 50 products are two pieces of 250', () => {
    const made = vi.spyOn(globalThis, 'Function');
    const products = Array.from({ length: 500 }, (_, q) => q);
    const places = groupProducts(
      products.map((q) => Math.floor(q / 50)),
      products.map((q) => q % 7),
      products.map((q) => q % 11),
      10,
    );
    const sums = new SumsOfProducts(places, 'add');
    const a = Float64Array.from([1, 2, 3, 4, 5, 6, 7]);
    const b = Float64Array.from({ length: 11 }, (_, i) => 100 * i);
    const wanted = Array.from({ length: 12 }, () => 0.5);
    for (const q of products) wanted[Math.floor(q / 50)] += a[q % 7] * b[q % 11];
    const out = new Float64Array(12);
    // 80,000 calls of 500 products are the 40 million after which code is made, 2,048 more until it is always used.
    for (let call = 0; call < 82_100; call++) {
      out.fill(0.5);
      sums.apply(a, b, out);
    }
    expect([...out]).toEqual(wanted);
    expect(made).toHaveBeenCalledTimes(2);
  });
});
