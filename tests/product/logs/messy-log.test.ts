import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { csvTable, readLog, readLogMap } from '@leat/core';
import { describe, expect, it } from 'vitest';
import writeXlsxFile from 'write-excel-file/node';
import { leat } from '../../support/leat.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const csv = readFileSync(join(here, 'messy.csv'), 'utf8');
const map = readFileSync(join(here, 'messy.map.yaml'), 'utf8');
const read = (text = csv, by = map) => {
  const table = csvTable(text, 'messy.csv');
  return readLog(table, readLogMap(by, 'messy.map.yaml', table));
};
const log = read();

/** What is said of a row and a column. */
const said = (row: number, column: string): string[] =>
  log.oddities
    .filter((oddity) => oddity.row === row && oddity.column === column)
    .map(({ problem, done }) => `${problem}: ${done}`);
const bounds = (row: number, column: string): [number, number] | undefined => {
  const reading = log.readings.find((each) => each.row === row && each.column === column);
  return reading === undefined ? undefined : [reading.low, reading.high];
};

describe('a log with every oddity of hand-kept logs (invented)', () => {
  it.each([
    [4, 'NH3/4 (ppm)', 'less than the kit shows: kept as at most 0.25 mg N/L'],
    [4, 'NO3-N', 'a range: kept as 10 to 20 mg N/L'],
    [5, 'NH3/4 (ppm)', 'a trace: kept as 0 to 0.25 mg N/L'],
    [5, 'pH', 'no pH is so high: left out; write 6.9 if that was meant'],
    [5, 'Feed (cups)', 'decimal comma: kept as 275 g'],
    [
      5,
      'Notes',
      'something was done to the system: not acted on; in the scenario: { at: 2026-03-03, dose: { into: VESSEL, product: sodium-bicarbonate, mass: 50 g } }',
    ],
    [6, 'Date', 'no year: taken as 2026, that of the row above'],
    [6, 'NH3/4 (ppm)', 'a range: kept as 0 to 0.25 mg N/L'],
    [6, 'Temp F', "another unit than the column's (C): kept as 25.45 to 25.55 C"],
    [6, 'KH dKH', "another unit than the column's (ppm): kept as 69.5 to 70.5 mg/L as CaCO3"],
    [6, 'Feed (cups)', "another unit than the column's (g): kept as 250 g"],
    [7, 'NH3/4 (ppm)', 'between the steps of the kit: kept as 0.25 to 0.5 mg N/L'],
    [7, 'KH dKH', 'an estimate: kept as 3.5 to 4.5 dKH'],
    [7, 'Feed (cups)', 'no feed: kept as 0 g'],
    [7, 'tank-2 DO', 'no reading: left out'],
    [8, 'NH3/4 (ppm)', 'no reading: left out'],
    [8, 'NO2 ppm', 'not a number: left out'],
    [8, 'tank-1 DO', 'decimal comma: kept as 6.25 to 6.35 mg/L'],
    [
      8,
      'Notes',
      'something was done to the system: not acted on; in the scenario: { at: 2026-03-06, change-water: { vessel: VESSEL, share: 20 %, water: WATER } }',
    ],
    [9, 'Date', 'the date of row 8 again: both are kept'],
    [10, 'Temp F', 'no temperature is so high: left out; write 77 if that was meant'],
    [11, 'NO2 ppm', 'nothing found: kept as at most 0.125 mg/L as NO2'],
    [11, 'KH dKH', 'may be 1.200 or 1200: left out'],
    [
      11,
      'Notes',
      'something was done to the system: not acted on; in the scenario: { at: 2026-03-12, stock: { cohort: COHORT, number: 20, mass: MASS } }',
    ],
    [12, 'Date', 'not a date: the whole row is left out'],
    [13, 'NO2 ppm', 'more than the kit shows: kept as at least 5 mg/L as NO2'],
    [13, 'Feed (cups)', '"buckets" is no unit of mass and no measure of the map: left out'],
    [
      13,
      'Notes',
      'something was done to the system: not acted on; in the scenario: { at: 2026-03-13, lose-fish: { cohort: COHORT, number: 3 } }',
    ],
  ])('row %i, %s: %s', (row, column, text) => {
    expect(said(row, column)).toEqual([text]);
  });

  it('a reading far from those around it says so too', () => {
    expect(said(6, 'NO3-N')).toEqual([
      'more than the kit shows: kept as at least 160 mg N/L',
      'stands out from those around it (10-20, 20, 40, 20): kept: look whether it is a slip',
    ]);
  });

  it('a row written late says both things', () => {
    expect(said(10, 'Date')).toEqual([
      'earlier than the row above (2026-03-06): kept at its own date',
      'the date of row 6 again: both are kept',
    ]);
  });

  it('says no more than that', () => {
    expect(log.oddities).toHaveLength(32);
  });

  it('a card keeps its interval, to the middle of its neighbours', () => {
    expect(bounds(3, 'NH3/4 (ppm)')).toEqual([0.125, 0.375]);
    expect(bounds(13, 'NH3/4 (ppm)')).toEqual([3, 6]);
  });

  it('nothing below and nothing above a card is open', () => {
    expect(bounds(4, 'NH3/4 (ppm)')).toEqual([-Infinity, 0.25]);
    expect(bounds(6, 'NO3-N')).toEqual([160, Infinity]);
    expect(bounds(11, 'NO2 ppm')?.[0]).toBe(-Infinity);
  });

  it('rounded numbers keep half of their last place', () => {
    const [low, high] = bounds(3, 'pH') ?? [];
    expect(low).toBeCloseTo(7.15, 12);
    expect(high).toBeCloseTo(7.25, 12);
  });

  it('reads ions as nitrogen, degF as degC and dKH as meq/L', () => {
    const value = (row: number, column: string) =>
      log.readings.find((each) => each.row === row && each.column === column)?.value;
    // Molar masses 14.007 and 46.005; one dKH is 10 mg/L of CaO, 0.35663 meq/L.
    expect(value(7, 'NO2 ppm')).toBeCloseTo(14.007 / 46.005, 9);
    expect(value(3, 'Temp F')).toBeCloseTo(25, 9);
    expect(value(3, 'KH dKH')).toBeCloseTo(5 * 0.356653, 4);
    // Of calcium carbonate, 100.086 g for two equivalents.
    expect(value(6, 'KH dKH')).toBeCloseTo(70 / (100.086 / 2), 4);
  });

  it('counts feed in cups and in grams', () => {
    expect(log.feed.map(({ row, grams }) => [row, grams])).toEqual([
      [3, 220],
      [4, 220],
      [5, 275],
      [6, 250],
      [7, 0],
      [8, 165],
      [9, 165],
      [10, 220],
      [11, 220],
    ]);
  });

  it('keeps two tanks apart', () => {
    const vessels = log.readings.filter(({ reads }) => reads === 'oxygen').map(({ vessel }) => vessel);
    expect(new Set(vessels)).toEqual(new Set(['tank-1', 'tank-2']));
  });

  it('a spreadsheet says the same as its CSV', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'leat-log-'));
    writeFileSync(join(folder, 'log.csv'), 'Date,pH,Feed\n2026-03-01,7.2,100\n2026-03-02,7.1,<120\n');
    await writeXlsxFile([
      [{ value: 'Date' }, { value: 'pH' }, { value: 'Feed' }],
      [{ value: new Date('2026-03-01'), format: 'yyyy-mm-dd' }, { value: 7.2 }, { value: 100 }],
      [{ value: '2026-03-02' }, { value: 7.1 }, { value: '<120' }],
    ]).toFile(join(folder, 'log.xlsx'));
    writeFileSync(
      join(folder, 'map.yaml'),
      'date: { column: Date }\ncolumns:\n  pH: { reads: pH, in: tank }\n  Feed: { feed: all, unit: g }\n',
    );
    const of = async (file: string) => {
      const call = await leat(['log', file, '--map', 'map.yaml', '--json'], folder);
      expect(call.err).toBe('');
      // The hash is over all of the document, its file too.
      const { file: name, hash, ...rest } = JSON.parse(call.out) as { file: string; hash: string };
      expect(name).toBe(file);
      expect(hash).toMatch(/^[\da-f]{64}$/);
      return rest;
    };
    const fromSheet = await of('log.xlsx');
    expect(fromSheet).toMatchObject({ from: '2026-03-01', to: '2026-03-02', days: 2 });
    expect(fromSheet).toEqual(await of('log.csv'));
  });
});
