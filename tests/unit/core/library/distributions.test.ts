import { describe, expect, it } from 'vitest';
import { draw } from '../../../../packages/core/src/library/distributions.js';
import { quantile } from '../../../../packages/core/src/library/distributions.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';

describe('quantile', () => {
  const spread = { value: 2, low: 1, high: 5 };

  it.each(['normal', 'lognormal'] as const)(
    'puts 5, 50 and 95 %% of %s at low, value and high',
    (distribution) => {
      expect(quantile({ ...spread, distribution }, 0.05)).toBeCloseTo(1, 7);
      expect(quantile({ ...spread, distribution }, 0.5)).toBe(2);
      expect(quantile({ ...spread, distribution }, 0.95)).toBeCloseTo(5, 7);
    },
  );

  it('ends uniform and triangular at low and high', () => {
    for (const distribution of ['uniform', 'triangular'] as const) {
      expect(quantile({ ...spread, distribution }, 0)).toBe(1);
      expect(quantile({ ...spread, distribution }, 1)).toBe(5);
    }
    expect(quantile({ ...spread, distribution: 'uniform' }, 0.25)).toBe(2);
    expect(quantile({ ...spread, distribution: 'triangular' }, 0.25)).toBeCloseTo(2, 12);
  });

  it('gives a fixed number as it is', () => {
    expect(quantile({ ...spread, distribution: 'fixed' }, 0.9)).toBe(2);
  });
});

describe('draw', () => {
  const base = tableRows.get('molar.nitrogen');
  if (base === undefined) throw new Error('molar.nitrogen is missing');
  const wide = { ...base, value: 2, low: 0.1, high: 4, distribution: 'normal' } as const;

  it('draws again when a draw is not above 0 and low is', () => {
    const stream = [0, 0.001, 0.5];
    expect(draw(wide, () => stream.shift() ?? NaN)).toBe(2);
    expect(stream).toEqual([]);
  });

  it('gives up on a source that never gives a legal draw', () => {
    expect(() => draw(wide, () => 0)).toThrow('no legal draw of molar.nitrogen in 1000 tries');
  });
});
