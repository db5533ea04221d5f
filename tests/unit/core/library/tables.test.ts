import { describe, expect, it } from 'vitest';
import { numberColumns } from '../../../../packages/core/src/library/numbers.generated.js';
import { originColumns, sourceCells } from '../../../../packages/core/src/library/origins.generated.js';
import { rangeColumns } from '../../../../packages/core/src/library/tables.generated.js';
import { conditionCells } from '../../../../packages/core/src/library/conditions.generated.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { rowsOf } from '../../../../packages/core/src/library/rows-in-use.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';

const rows = [...rowsOf(createParameters())];
const where = (bad: (row: (typeof rows)[number]) => boolean): string[] =>
  rows.filter(bad).map((row) => row.id);

describe('the tables', () => {
  it('have ids of two or more words of letters, digits and hyphens', () => {
    expect(where(({ id }) => !/^[a-z][a-z0-9-]*(\.[a-zA-Z0-9-]+)+$/.test(id))).toEqual([]);
  });

  it('use known units', () => {
    const known =
      '1 g/g g/m3 g/m2 g/mol g/(m2 d) g/(m3 d) 1/d d degC pH m m/d m2/m3 1/m2 t/ha eq/m3 mol/m3 eq/mol mol/mol mol/eq eq/g mol/g m2/g mol/MJ mol/(m2 d) L/mol atm 1/K K K2 K3 K4 ' +
      '1/(degC d) dS/m m/dS kPa K/m 1/degC 1/m m/s s/m rad MJ/m2/min MJ/K4/m2/d kPa^-0.5 degC^-0.5 degC^-1.5 m3 m2/d mol/L 1/pH';
    const long = [
      'L atm/(mol K)',
      '1/atm',
      '1/(atm K)',
      '1/(atm K2)',
      '1e-3 g^(1/3)/(degC d)',
      'mm m2/MJ',
      'mol m/(L dS)',
      'K mm s/kPa/m/d',
      'K^1.5 L^0.5/mol^0.5',
      'S cm2/eq',
      '(L/mol)^0.5',
      'S cm2/eq (L/mol)^0.5',
    ];
    const units = [...known.split(/ (?!d\))/), ...long];
    expect(where(({ unit }) => !units.includes(unit))).toEqual([]);
    expect(units.filter((unit) => !rows.some((row) => row.unit === unit))).toEqual([]);
  });

  it('name each number once', () => {
    expect(tableRows.size).toBe(numberColumns.value.length);
  });

  it('have every column as long as the others', () => {
    const { ends, ...words } = { ...rangeColumns, ...originColumns, value: numberColumns.value };
    for (const [name, cells] of Object.entries(words)) expect(cells.length, name).toBe(tableRows.size);
    expect(ends).toHaveLength(2 * tableRows.size);
    expect(conditionCells).toHaveLength(tableRows.size);
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

  it('say of every source whether it has a DOI and a year, and invent none', () => {
    const bad = sourceCells.filter(
      ([, , year, doi]) => !/^(none|\d{4})$/.test(year) || !/^(none|10\.\d{4,9}\/\S+)$/.test(doi),
    );
    expect(bad).toEqual([]);
    // A DOI added here must have been looked up, and this line changed with it.
    expect(sourceCells.filter(([, , , doi]) => doi !== 'none').map(([key]) => key)).toEqual([
      'clarke-johnston-1999',
      'fredricks-2018',
      'lettuce-dry-shares',
      'low-ph-crops',
      'schwartz-2019',
    ]);
  });

  it('name no place of a note that a reader has not: a page is of the source, or -', () => {
    expect(where(({ page }) => /^[A-Z]\d?$/.test(page))).toEqual([]);
  });

  it('say memory or common practice wherever no publication is claimed', () => {
    expect(where(({ source, mark }) => source === 'memory' && !['M', 'W'].includes(mark))).toEqual([]);
    expect(where(({ source, mark }) => source === 'common-practice' && mark !== 'P')).toEqual([]);
    expect(where(({ source, mark }) => mark === 'P' && source !== 'common-practice')).toEqual([]);
  });
});
