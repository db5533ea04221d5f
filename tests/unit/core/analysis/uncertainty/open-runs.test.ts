import { describe, expect, it } from 'vitest';
import { drawnValues } from '../../../../../packages/core/src/analysis/uncertainty/open-runs.js';
import { quantile } from '../../../../../packages/core/src/library/distributions.js';
import { tableRows } from '../../../../../packages/core/src/library/table-rows.js';
import type { RangedRow } from '../../../../../packages/core/src/library/table-row.js';

const [first] = tableRows.values();
const rowWith = (part: Partial<RangedRow>): RangedRow => ({ ...first, id: 'x.y', ...part });

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
