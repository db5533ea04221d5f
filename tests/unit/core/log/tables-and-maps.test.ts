import { describe, expect, it } from 'vitest';
import { csvTable, logTable } from '../../../../packages/core/src/log/log-table.js';
import { readLog } from '../../../../packages/core/src/log/read-log.js';
import { readLogMap } from '../../../../packages/core/src/log/read-map.js';

describe('a table', () => {
  const rows = (count: number, width: number): string[][] =>
    Array.from({ length: count }, () => Array.from({ length: width }, () => 'a'));

  it('has at most 200 columns and 100,000 rows, the most is said, and what came', () => {
    expect(logTable(rows(1, 200), 'log').rows[0]).toHaveLength(200);
    expect(() => logTable(rows(1, 201), 'log')).toThrow(
      'log: too many columns; got 201; expected at most 200',
    );
    expect(logTable(rows(100_000, 1), 'log').rows).toHaveLength(100_000);
    expect(() => logTable(rows(100_001, 1), 'log')).toThrow(
      'log: too many rows; got 100001; expected at most 100000',
    );
  });

  it('has at most 20 million characters, and is not empty nor binary', () => {
    expect(csvTable(`a,b\n${'x'.repeat(20_000_000 - 4)}`, 'log').rows).toHaveLength(2);
    expect(() => csvTable(`a,b\n${'x'.repeat(20_000_000 - 3)}`, 'log')).toThrow(
      /^log: too long; expected at most 20000000 characters$/,
    );
    expect(() => csvTable('', 'log')).toThrow(/^log: empty; expected a row of names, then one row a day$/);
    expect(() => csvTable('a\0b', 'log')).toThrow(
      /^log: not text; expected a CSV file, or a spreadsheet with the ending \.xlsx$/,
    );
    expect(() => logTable([], 'log')).toThrow(/^log: empty; expected/);
  });
});

describe('a map', () => {
  const table = csvTable('Date,A\n2026-03-01,1\n', 'log.csv');
  const column = 'columns: { A: { reads: ammonia, in: tank, unit: mg N/L } }\n';
  const map = `date: { column: Date }\n${column}`;

  it('is of version 1 or of none said', () => {
    const read = readLogMap(map, 'm', table);
    expect(readLogMap(`version: 1\n${map}`, 'm', table)).toEqual(read);
    for (const version of ['2', '"1"', '[1]'])
      expect(() => readLogMap(`version: ${version}\n${map}`, 'm', table)).toThrow(
        'version: a map of another version',
      );
  });

  it('names columns that there are: else the nearest, or those that there are', () => {
    const other = csvTable(`Date,${Array.from({ length: 13 }, (_, i) => `C${i}`).join(',')}\n`, 'log.csv');
    expect(() => readLogMap(map.replace('A:', 'Nothing like it:'), 'm', table)).toThrow(
      'no such column in row 1 of log.csv; got Nothing like it; expected one of Date, A',
    );
    expect(() => readLogMap(map.replace('A:', 'Nothing like it:'), 'm', other)).toThrow(
      'expected one of Date, C0, C1, C2, C3, C4, C5, C6, C7, C8, C9, C10 ...',
    );
    expect(() => readLogMap(map.replace('{ column: Date', '{ column: Dat'), 'm', table)).toThrow(
      'did you mean Date',
    );
    const single = csvTable('Date\n2026-03-01\n', 'log.csv');
    expect(() => readLogMap(map, 'm', single)).toThrow('no such column');
  });

  it('does not lead to a row without names', () => {
    expect(() => readLogMap(`header: 7\n${map}`, 'm', table)).toThrow(
      'nothing in row 7 of log.csv; got 7; expected the row of column names',
    );
  });
});

describe('a reading by the steps of a kit', () => {
  const read = (...cells: readonly string[]) => {
    const table = csvTable(
      ['Date,A', ...cells.map((cell, i) => `2026-03-0${i + 1},${cell}`)].join('\n'),
      'log.csv',
    );
    const map =
      'date: { column: Date }\ncolumns: { A: { reads: ammonia, in: tank, unit: mg N/L, steps: [1, 2, 4] } }\n';
    return readLog(table, readLogMap(map, 'm', table));
  };

  it('lies between the halves of the way to its neighbours, open at the ends of the card', () => {
    expect(read('1', '2', '4').readings.map(({ low, high, value }) => [low, high, value])).toEqual([
      [-Infinity, 1.5, 1],
      [1.5, 3, 2],
      [3, Infinity, 4],
    ]);
  });

  it('lies between the steps beside it where it is none, open beyond the ends, and that is told', () => {
    const log = read('0.5', '3', '5');
    expect(log.readings.map(({ low, high, value }) => [low, high, value])).toEqual([
      [-Infinity, 1, 0.5],
      [2, 4, 3],
      [4, Infinity, 5],
    ]);
    expect(log.oddities.map(({ problem, done }) => `${problem}: ${done}`)).toEqual([
      'between the steps of the kit: kept as at most 1 mg N/L',
      'between the steps of the kit: kept as 2 to 4 mg N/L',
      'between the steps of the kit: kept as at least 4 mg N/L',
    ]);
  });

  it('is left out where it is beyond all bounds, by the figure that was written, open or not', () => {
    const log = read('<5000', '>5000', '4000-5000');
    expect(log.readings).toEqual([]);
    expect(log.oddities.map(({ problem }) => problem)).toEqual(Array(3).fill('no ammonia is so high'));
  });

  it('may be what a spreadsheet made of 1-2: the number of a day about then, counted from 30 December 1899', () => {
    // 46024 days after that day is 2 January 2026; 36161, of 1 January 1999, is no day that was meant in 2026.
    const log = read('46024', '36161');
    expect(log.readings).toEqual([]);
    expect(log.oddities.map(({ problem, done }) => `${problem}: ${done}`)).toEqual([
      'no ammonia is so high; to a spreadsheet it is the day 2026-01-02: left out; write 1-2 if that was typed',
      'no ammonia is so high: left out',
    ]);
  });
});

describe('rows that lack cells', () => {
  const map =
    'date: { column: Date }\ncolumns: { A: { reads: ammonia, in: tank, unit: mg N/L }, N: notes, W: skip }\n';
  const log = (...rows: readonly string[]) => {
    const table = csvTable(['Date,A,N,W', ...rows].join('\n'), 'log.csv');
    return readLog(table, readLogMap(map, 'm', table));
  };

  it('are no doubt where they lack words alone, and one where they lack numbers or have more', () => {
    expect(log('2026-03-01,1', '2026-03-02,1').readings).toHaveLength(2);
    expect(() => log('2026-03-01', '2026-03-02')).toThrow('2 of 2 rows');
    expect(() => log('2026-03-01,1,,,5', '2026-03-02,1,,,5')).toThrow('2 of 2 rows');
  });
});
