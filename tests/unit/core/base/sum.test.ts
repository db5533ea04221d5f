import { fsum } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sum } from '../../../../packages/core/src/base/sum.js';

describe('sum', () => {
  it('is 0 of nothing', () => {
    expect(sum([])).toBe(0);
  });

  it('keeps what plain addition loses (the example of Neumaier)', () => {
    const values = [1, 1e100, 1, -1e100];
    expect(values.reduce((a, b) => a + b, 0)).toBe(0);
    expect(sum(values)).toBe(2);
  });

  it('does not drift over many small parts', () => {
    expect(sum(new Array<number>(1_000_000).fill(0.1))).toBe(100_000);
  });

  it.each([
    [[1, Number.NaN], Number.NaN],
    [[Infinity, 1], Infinity],
    [[Infinity, -Infinity], Number.NaN],
  ])('lets %j show', (values, total) => {
    expect(sum(values)).toBe(total);
  });

  it("is that of d3-array's adder, to the last bit, of numbers of any size", () => {
    const number = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e200, max: 1e200 }),
      fc.integer(),
    );
    fc.assert(
      fc.property(fc.array(number, { minLength: 3, maxLength: 60 }), (values) => {
        expect(sum(values)).toBe(fsum(values));
      }),
      { numRuns: 1000 },
    );
  });

  it('does not depend on order, for whole numbers of any size that doubles hold', () => {
    fc.assert(
      fc.property(fc.array(fc.maxSafeInteger(), { maxLength: 50 }), (values) => {
        expect(sum(values)).toBe(sum([...values].reverse()));
      }),
    );
  });
});
