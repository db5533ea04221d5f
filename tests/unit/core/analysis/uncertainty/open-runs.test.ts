import { describe, expect, it } from 'vitest';
import { normalProbability } from '../../../../../packages/core/src/base/normal.js';
import { drawnValues } from '../../../../../packages/core/src/analysis/uncertainty/open-runs.js';
import { normalQuantile } from '../../../../../packages/core/src/base/normal.js';
import { quantile } from '../../../../../packages/core/src/library/distributions.js';
import { tableRows } from '../../../../../packages/core/src/library/table-rows.js';
import type { TableRow } from '../../../../../packages/core/src/library/table-row.js';

const [first] = tableRows.values();
const rowWith = (part: Partial<TableRow>): TableRow => ({ ...first, id: 'x.y', ...part });

describe('values at uniform numbers', () => {
  it('are the quantiles of the rows', () => {
    const rows = [...tableRows.values()].filter(({ distribution }) => distribution !== 'fixed');
    const values = drawnValues(
      rows,
      rows.map((_, i) => (i + 0.5) / rows.length),
    );
    rows.forEach((row, i) => expect(values.get(row.id)).toBe(quantile(row, (i + 0.5) / rows.length)));
  });

  it('stay above 0 where the range does, even in the far tail of a normal distribution, and always alike', () => {
    const row = rowWith({ distribution: 'normal', value: 1, low: 0.1, high: 2 });
    expect(quantile(row, 1e-6)).toBeLessThan(0);
    const value = drawnValues([row], [1e-6]).get('x.y');
    expect(value).toBeGreaterThan(0);
    expect(drawnValues([row], [1e-6]).get('x.y')).toBe(value);
  });
});

describe('the share of normal draws', () => {
  it('undoes the quantile', () => {
    for (const u of [1e-9, 1e-4, 0.05, 0.3, 0.5, 0.8, 0.999])
      expect(normalProbability(normalQuantile(u)) / u).toBeCloseTo(1, 7);
  });

  it('has known values (NIST: 1.96, 3; tails symmetric)', () => {
    expect(normalProbability(1.96)).toBeCloseTo(0.9750021048517795, 13);
    expect(normalProbability(-3)).toBeCloseTo(0.0013498980316301, 13);
    expect(normalProbability(8) + normalProbability(-8)).toBe(1);
    expect([normalProbability(40), normalProbability(-40)]).toEqual([1, 0]);
  });
});
