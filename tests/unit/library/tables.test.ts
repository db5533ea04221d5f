import { describe, expect, it } from 'vitest';
import { sourceCells, tableCells } from '../../../packages/core/src/library/tables.generated.js';
import { tableRows } from '../../../packages/core/src/library/table-rows.js';
import { generate, generated } from '../../../packages/core/tools/tables.mjs';

const rows = [...tableRows.values()];
const where = (bad: (row: (typeof rows)[number]) => boolean): string[] =>
  rows.filter(bad).map((row) => row.id);

describe('the tables', () => {
  it('are in the generated module as they stand', () => {
    expect(generated()).toBe(generate());
  });

  it('name each number once', () => {
    const ids = tableCells.map((cells) => cells[1]);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    expect(tableRows.size).toBe(tableCells.length);
  });

  it('give every number a unit, conditions and a page', () => {
    expect(where((row) => [row.unit, row.conditions, row.page].some((cell) => cell.trim() === ''))).toEqual(
      [],
    );
  });

  it('give finite values inside their range', () => {
    expect(where((row) => ![row.low, row.value, row.high].every(Number.isFinite))).toEqual([]);
    expect(where((row) => row.low > row.value || row.value > row.high)).toEqual([]);
  });

  it('use known distributions, wider than a point where they are drawn', () => {
    const known = new Set(['fixed', 'uniform', 'triangular', 'normal', 'lognormal']);
    expect(where((row) => !known.has(row.distribution))).toEqual([]);
    expect(where((row) => row.distribution !== 'fixed' && row.low >= row.high)).toEqual([]);
    expect(where((row) => row.distribution === 'lognormal' && row.low <= 0)).toEqual([]);
  });

  it('carry a legal mark', () => {
    const legal = new Set(['R', 'S', 'C', 'M', 'W', 'P']);
    expect(where((row) => !legal.has(row.mark))).toEqual([]);
  });

  it('cite sources that exist, each source once and each of them used', () => {
    const keys = sourceCells.map(([key]) => key);
    expect(where((row) => !keys.includes(row.source))).toEqual([]);
    expect(new Set(keys).size).toBe(keys.length);
    const used = new Set(rows.map((row) => row.source));
    expect(keys.filter((key) => !used.has(key))).toEqual(['scenario']);
  });
});
