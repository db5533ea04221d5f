import { quantileSorted } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binnedSpreads } from '../../../../../packages/core/src/analysis/uncertainty/spreads.js';
import { exactSpreads } from '../../../../../packages/core/src/analysis/uncertainty/spreads.js';
import type { Spreads } from '../../../../../packages/core/src/analysis/uncertainty/spreads.js';

/** One cell filled with values in an order. */
function filled(spreads: Spreads, values: readonly number[]): Spreads {
  values.forEach((value, member) => {
    spreads.add(member, [value]);
  });
  return spreads;
}

const binned = (values: readonly number[], members = values.length): Spreads =>
  filled(binnedSpreads(1, members), values);

/** Numbers of all sizes, with clumps. */
const anyValues = fc.array(
  fc.oneof(
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    fc.double({ min: 7, max: 7.001, noNaN: true }),
    fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e-6, max: 1e-6 }),
    fc.constantFrom(0, -0, 1, 7),
  ),
  { minLength: 1, maxLength: 300 },
);
const shares = [0, 0.05, 0.25, 0.5, 0.75, 0.95, 1];

describe('spreads in bins', () => {
  it('give quantiles within a bin of the exact ones (d3-array), and a bin is at most 1/127 of the span or 2^-44 of the largest value', () => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const spreads = binned(values);
        const sorted = [...values].sort((a, b) => a - b);
        const span = sorted[sorted.length - 1] - sorted[0];
        expect(spreads.count(0)).toBe(values.length);
        const largest = Math.max(...sorted.map(Math.abs));
        expect(spreads.width(0)).toBeLessThanOrEqual(Math.max(span / 127, largest * 2 ** -44, 2 ** -1000));
        for (const p of shares) {
          const exact = quantileSorted(sorted, p) ?? Number.NaN;
          expect(Math.abs(spreads.quantile(0, p) - exact)).toBeLessThanOrEqual(spreads.width(0) * (1 + 1e-9));
        }
      }),
    );
  });

  it('hold the same bytes whatever the order', () => {
    fc.assert(
      fc.property(anyValues, fc.integer(), (values, turn) => {
        const at = ((turn % values.length) + values.length) % values.length;
        const turned = [...values.slice(at), ...values.slice(0, at)].reverse();
        expect(binned(turned).state()).toEqual(binned(values).state());
      }),
    );
  });

  it('hold the same bytes put together from two parts as whole', () => {
    fc.assert(
      fc.property(anyValues, anyValues, (one, other) => {
        const members = one.length + other.length;
        const merged = binned(one, members);
        merged.merge(binned(other, members).state());
        expect(merged.state()).toEqual(binned([...one, ...other], members).state());
      }),
    );
  });

  it('leave out what is no number, and have no quantile of nothing', () => {
    const spreads = binned([1, Number.NaN, 3, Infinity]);
    expect(spreads.count(0)).toBe(2);
    expect(spreads.quantile(0, 0.5)).toBeGreaterThanOrEqual(1);
    expect(binned([Number.NaN]).quantile(0, 0.5)).toBeNaN();
  });

  it('tell a cell of one value exactly', () => {
    const spreads = binned([4.2, 4.2, 4.2]);
    expect([spreads.quantile(0, 0.05), spreads.width(0)]).toEqual([4.2, 0]);
  });
});

describe('spreads kept exactly', () => {
  it('have the quantiles of d3-array, and merge by member', () => {
    const values = [5, 1, Number.NaN, 4, 9];
    const whole = filled(exactSpreads(1, 5), values);
    expect(whole.quantile(0, 0.3)).toBe(quantileSorted([1, 4, 5, 9], 0.3));
    const odd = exactSpreads(1, 5);
    const even = exactSpreads(1, 5);
    values.forEach((value, member) => {
      (member % 2 === 1 ? odd : even).add(member, [value]);
    });
    odd.merge(even.state());
    expect(odd.state()).toEqual(whole.state());
    expect(odd.count(0)).toBe(4);
  });
});
