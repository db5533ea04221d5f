import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { csvTable, describeFault, InputError, readLog, readLogMap } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { leat } from '../../support/leat.js';

const log = 'Date,TAN,Feed,Words\n2026-03-01,0.5,100,x\n2026-03-02,0.4,100,y\n';
const map = `date: { column: Date }
columns:
  TAN: { reads: ammonia, in: tank, unit: mg N/L }
  Feed: { feed: all, unit: cup }
  Words: notes
measures: { cup: 110 g }
`;

function messages(text: string, by: string): string[] {
  try {
    const table = csvTable(text, 'log.csv');
    readLog(table, readLogMap(by, 'map.yaml', table));
  } catch (error) {
    if (error instanceof InputError) return error.faults.map(describeFault);
    throw error;
  }
  return [];
}

describe('what is wrong with a map of a log', () => {
  it('nothing', () => {
    expect(messages(log, map)).toEqual([]);
  });

  it.each([
    [
      'a column that is not there',
      ['TAN:', 'TNA:'],
      ['map.yaml:3:3: columns.TNA: no such column in row 1 of log.csv; got TNA; did you mean TAN?'],
    ],
    [
      'a date column that is not there',
      ['column: Date', 'column: Day'],
      [
        'map.yaml:1:17: date.column: no such column in row 1 of log.csv; got Day; expected one of Date, TAN, Feed, Words',
      ],
    ],
    [
      'an ambiguous unit',
      ['unit: mg N/L', 'unit: ppm'],
      [
        'map.yaml:3:42: columns.TAN.unit: ambiguous unit: it may mean nitrogen or the whole ion; got ppm; expected "mg N/L" for nitrogen or "mg/L as NH4" for the ion',
      ],
    ],
    [
      'no unit',
      [', unit: mg N/L', ''],
      ['map.yaml:3:3: columns.TAN.unit: missing; expected the unit of ammonia'],
    ],
    [
      'an unknown quantity',
      ['reads: ammonia', 'reads: amonia'],
      [
        'map.yaml:3:17: columns.TAN.reads: unknown word; got "amonia"; expected one of ammonia, nitrite, nitrate, pH, alkalinity, oxygen, temperature, chloride, volume; did you mean ammonia?',
      ],
    ],
    [
      'an unknown measure',
      ['unit: cup', 'unit: cups'],
      [
        'map.yaml:4:28: columns.Feed.unit: unknown unit "cups"; got "cups"; expected a unit of mass, or one of the measures of this file; did you mean cup?',
      ],
    ],
    [
      'an unknown word for a column',
      ['Words: notes', 'Words: note'],
      [
        'map.yaml:5:10: columns.Words: unknown word; got "note"; expected notes, skip, or a map with reads, feed or acts-on',
      ],
    ],
    [
      'an unknown key',
      ['measures:', 'measure:'],
      ['map.yaml:6:1: measure: unknown key; did you mean measures?'],
    ],
    [
      'steps that fall',
      ['unit: mg N/L', 'unit: mg N/L, steps: [1, 0.5]'],
      ['map.yaml:3:50: columns.TAN.steps: steps must rise, such as [0, 0.25, 0.5, 1]'],
    ],
  ])('%s', (_, [from, to], expected) => {
    expect(messages(log, map.replace(from, to))).toEqual(expected);
  });
});

describe('what is wrong with a log', () => {
  it.each([
    ['an empty file', '', ['log.csv: empty; expected a row of names, then one row a day']],
    ['blank lines', '\n\n,,\n', ['log.csv: empty; expected a row of names, then one row a day']],
    ['no text', 'PK\0\0', ['log.csv: not text; expected a CSV file, or a spreadsheet with the ending .xlsx']],
    [
      'dates open to doubt',
      'Date,TAN,Feed,Words\n3/4/26,0.5,100,\n',
      [
        'log.csv: Date: the dates do not say whether day or month comes first; expected in the map, date: { column: ..., order: day-month-year } or month-day-year',
      ],
    ],
  ])('%s', (_, text, expected) => {
    expect(messages(text, map)).toEqual(expected);
  });

  it('an order given in the map settles the doubt', () => {
    const text = 'Date,TAN,Feed,Words\n3/4/26,0.5,100,\n';
    expect(messages(text, map.replace('column: Date', 'column: Date, order: month-day-year'))).toEqual([]);
  });
});

describe('leat log', () => {
  const folder = mkdtempSync(join(tmpdir(), 'leat-log-'));
  writeFileSync(join(folder, 'log.csv'), log);
  writeFileSync(join(folder, 'map.yaml'), map);

  it('without a map shows a guess, and writes it when asked', async () => {
    const call = await leat(['log', 'log.csv', '--write-map', 'guess.yaml'], folder);
    expect(call.code).toBe(0);
    expect(call.out).toContain('TAN     ammonia in tank, mg N/L');
    const again = await leat(['log', 'log.csv', '--map', 'guess.yaml'], folder);
    expect(again.code).toBe(0);
    expect(again.out).toContain('ammonia   tank   mg N/L      2');
  });

  it('exits 2 for a file that is not there, a folder, and a spreadsheet that is none', async () => {
    writeFileSync(join(folder, 'no.xlsx'), 'no spreadsheet');
    expect(await leat(['log', 'none.csv', '--map', 'map.yaml'], folder)).toMatchObject({
      code: 2,
      err: 'none.csv: cannot be read: no such file or folder\n',
    });
    const call = await leat(['log', 'no.xlsx', '--map', 'map.yaml'], folder);
    expect(call.code).toBe(2);
    expect(call.err).toMatch(/^no\.xlsx: cannot be read as a spreadsheet: /);
    expect(call.err).not.toContain('    at ');
  });
});
