import { allSeries, basisOf, openRuns, openScenarioText } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { drawnValues } from '../../../../../packages/core/src/analysis/uncertainty/open-runs.js';
import { quantile } from '../../../../../packages/core/src/library/distributions.js';
import { tableRows } from '../../../../../packages/core/src/library/table-rows.js';
import type { RangedRow } from '../../../../../packages/core/src/library/table-row.js';
import { smallSystem } from '../../../../support/small-text.js';

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

describe('runs of drawn numbers', () => {
  // The tank of the small system has near a tenth of all surface, from which on a vessel has lime scale of its own; draws of
  // `vessel.outline` take it to either side.
  it('have the series of the system as it stands, though their surfaces are drawn', () => {
    const open = openScenarioText(smallSystem, { file: 'small.yaml', days: 1 });
    const { rows, series } = basisOf(open, { measures: [], conditions: [] });
    const outline = rows.findIndex(({ id }) => id === 'vessel.outline');
    expect(outline).toBeGreaterThanOrEqual(0);
    const runAt = openRuns(open, rows);
    const names = [0.02, 0.98].map((u) => {
      const run = runAt(rows.map((_, i) => (i === outline ? u : 0.5)));
      expect(run.outcome.kind).toBe('done');
      return allSeries(run).map(({ name }) => name);
    });
    for (const each of names) expect(each).toEqual(series.map(({ name }) => name));
    const surfaces = [0.02, 0.98].map(
      (u) =>
        runAt(rows.map((_, i) => (i === outline ? u : 0.5))).model.scenario.vessels.find(
          ({ name }) => name === 'tank',
        )?.surface ?? 0,
    );
    expect(surfaces[0]).toBeLessThan(surfaces[1]);
  });
});
