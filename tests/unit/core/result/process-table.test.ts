import { describe, expect, it } from 'vitest';
import { processTable } from '../../../../packages/core/src/result/process-table.js';
import { smallRun } from './small-run.js';

const { model } = smallRun();

describe('processTable', () => {
  it('gives each process once with its coefficients, without transport', () => {
    const again = { ...model.rows[1], id: 'nitrification@tank', place: 'tank' };
    const table = processTable({ ...model, rows: [...model.rows, again] });
    expect(table.map(({ process }) => process)).toEqual(['feeding', 'nitrification', 'ammonia-loss']);
    expect(table[1].rows).toEqual(['nitrification@sump', 'nitrification@tank']);
    expect(table[0].entries[0]).toEqual({ component: 'feed-nitrogen', outside: 'feed', coefficient: -1 });
  });

  it('shows that rows close, and that one does not', () => {
    const [, sound] = processTable(model);
    expect(Math.max(...Object.values(sound.closure).map(Math.abs))).toBeLessThan(1e-14);
    const rows = model.rows.map((row) =>
      row.process === 'nitrification'
        ? { ...row, entries: row.entries.filter(({ component }) => component !== 'nitrate') }
        : row,
    );
    const [, leaky] = processTable({ ...model, rows });
    expect(leaky.closure.nitrogen).toBe(-1);
  });
});
