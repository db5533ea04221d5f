import { describe, expect, it } from 'vitest';
import { describeFault } from '../../../../packages/core/src/base/faults.js';
import { readTable } from '../../../../packages/core/src/library/read-table.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { rowsOf } from '../../../../packages/core/src/library/rows-in-use.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';
import { header, ownTable } from '../../../support/own-table.js';

const growth = 'aob.growth|0.5|1/d|0.4|0.6|triangular|measured|Own log book, 2025|p. 3|U';
const read = (text: string) => readTable(text, 'my.tsv', tableRows);
const faultsOf = (text: string): string[] => read(text).faults.map(describeFault);

/** The row of growth with one cell changed. */
function changed(column: string, text: string): string {
  const cells = growth.split('|');
  cells[header.split('\t').indexOf(column)] = text;
  return ownTable(cells.join('|'));
}

describe('a table of the user', () => {
  it('gives rows with their place', () => {
    expect(read(ownTable(growth))).toEqual({
      rows: [
        {
          id: 'aob.growth',
          value: 0.5,
          low: 0.4,
          high: 0.6,
          row: {
            unit: '1/d',
            distribution: 'triangular',
            conditions: 'measured',
            source: 'Own log book, 2025',
            page: 'p. 3',
            mark: 'U',
          },
          where: 'my.tsv:2',
        },
      ],
      lines: new Map([['aob.growth', 2]]),
      faults: [],
    });
  });

  it('may have columns in another order, empty lines, notes, a byte order mark and other line ends', () => {
    const cells = growth.split('|').reverse().join('\t');
    const text = `\uFEFF# mine\r\n${header.split('\t').reverse().join('\t')}\r\n\r\n${cells}\r\n`;
    const { rows, faults } = read(text);
    expect(faults).toEqual([]);
    expect(rows[0]).toMatchObject({ id: 'aob.growth', value: 0.5, where: 'my.tsv:4' });
  });

  it.each([
    ['fish.nile-tilapia.temperature-low|59|degF|57.2|60.8', [15, 14, 16]],
    ['fish.nile-tilapia.appetite|2|%/d|1|3', [0.02, 0.01, 0.03]],
    ['fish.nile-tilapia.limit-nitrite|3.2844|mg/L as NO2|3.2844|3.2844', [1, 1, 1]],
    ['fish.nile-tilapia.body-nitrogen|2.5|%|2|3', [0.025, 0.02, 0.03]],
    ['water.rain.alkalinity|5.0043|mg/L as CaCO3|5.0043|5.0043', [0.1, 0.1, 0.1]],
    ['crop.basil.days|5|weeks|4|6', [35, 28, 42]],
  ])('converts %s', (row, wanted) => {
    const { rows, faults } = read(ownTable(`${row}|fixed|c|fao-589|-|M`));
    expect(faults).toEqual([]);
    const [{ value, low = NaN, high = NaN }] = rows;
    [value, low, high].forEach((number, at) => expect(number).toBeCloseTo(wanted[at], 4));
  });

  it('keeps our own rows as they are', () => {
    for (const { id, value, unit, low, high, distribution, conditions, source, page, mark } of rowsOf(
      createParameters(),
    )) {
      const row = [id, value, unit, low, high, distribution, conditions, source, page, mark].join('|');
      const { rows, faults } = read(ownTable(row));
      expect(faults).toEqual([]);
      expect(rows[0]).toMatchObject({ id, value, low, high });
    }
  });
});

describe('faults of a table of the user', () => {
  it.each([
    [
      'id',
      'aob.growht',
      'my.tsv:2:1: id: no such number in the tables; got aob.growht; did you mean aob.growth?',
    ],
    [
      'id',
      'aob.k-alkalinity',
      'my.tsv:2:1: id: no such number in the tables; got aob.k-alkalinity; did you mean aob.k-carbon?',
    ],
    [
      'id',
      'fish.carp-2.body-nitrogn',
      'my.tsv:2:1: id: no such property of fish; got fish.carp-2.body-nitrogn; did you mean body-nitrogen?',
    ],
    [
      'id',
      'fish.Carp.mortality',
      'my.tsv:2:1: id: not a name; got Carp; expected a small letter, then small letters, digits and -',
    ],
    [
      'value',
      '0,5',
      'my.tsv:2:12: value of aob.growth: not a number; got "0,5"; expected a number with a decimal point, such as 0.025 or 2.5e-2',
    ],
    [
      'value',
      '0.9',
      'my.tsv:2:12: value of aob.growth: range of aob.growth does not hold its value; got 0.4 .. 0.9 .. 0.6; expected low <= value <= high',
    ],
    [
      'unit',
      'mg/L',
      'my.tsv:2:16: unit of aob.growth: not a unit of this number; got mg/L; expected 1/d as in our table, or a share a day such as "1.5 %/d" or "15 g/kg/d"',
    ],
    [
      'low',
      '-1',
      'my.tsv:2:12: value of aob.growth: aob.growth is below zero; got -1; expected zero or more',
    ],
    [
      'high',
      '',
      'my.tsv:2:24: high of aob.growth: not a number; got ""; expected a number with a decimal point, such as 0.025 or 2.5e-2',
    ],
    [
      'distribution',
      'triangel',
      'my.tsv:2:28: distribution of aob.growth: unknown distribution; got "triangel"; expected one of fixed, uniform, triangular, normal, lognormal; did you mean triangular?',
    ],
    ['conditions', '', 'my.tsv:2:39: conditions of aob.growth: empty; expected words, or - for none'],
    [
      'source',
      'timons-ebeling',
      'my.tsv:2:48: source of aob.growth: no such source; got "timons-ebeling"; expected a key of `leat show sources`, or a citation in words; did you mean timmons-ebeling?',
    ],
    [
      'source',
      '-',
      'my.tsv:2:48: source of aob.growth: no source; expected a key of `leat show sources`, or a citation in words',
    ],
    ['page', '', 'my.tsv:2:67: page of aob.growth: empty; expected words, or - for none'],
    [
      'mark',
      'X',
      'my.tsv:2:72: mark of aob.growth: unknown mark; got "X"; expected one of R, S, C, M, W, P, U; did you mean R?',
    ],
  ])('%s %j', (column, text, message) => {
    expect(faultsOf(changed(column, text))).toEqual([message]);
  });

  it('says that nitrogen must say as what it is counted', () => {
    const row = 'fish.nile-tilapia.limit-nitrite|1|mg/L|1|1|fixed|c|fao-589|-|M';
    expect(faultsOf(ownTable(row))[0]).toContain('ambiguous unit: it may mean nitrogen or the whole ion');
  });

  it('wants a range where a number is drawn', () => {
    const point = 'aob.growth|0.5|1/d|0.5|0.5|uniform|c|fao-589|-|M';
    const zero = 'aob.growth|0.5|1/d|0|0.6|lognormal|c|fao-589|-|M';
    expect(faultsOf(ownTable(point))[0]).toContain('uniform needs a range; got 0.5 .. 0.5');
    expect(faultsOf(ownTable(zero))[0]).toContain('aob.growth is zero; got 0; expected more than zero');
  });

  it('names every fault of a row, and the row that stands twice', () => {
    const bad = 'aob.growth|x|1/h|0.4|0.6|flat|c|-|-|Q';
    expect(faultsOf(ownTable(growth, bad))).toEqual([
      'my.tsv:3:1: id: given twice; got aob.growth; expected one row (the first is on line 2)',
    ]);
    expect(faultsOf(ownTable(bad)).map((text) => text.split(':').slice(1, 4).join(':'))).toEqual([
      '2:12: value of aob.growth',
      '2:26: distribution of aob.growth',
      '2:33: source of aob.growth',
      '2:37: mark of aob.growth',
    ]);
  });

  it.each([
    [
      '',
      [
        'my.tsv:1:1: an empty table; expected a first line with id, value, unit, low, high, distribution, conditions, source, page, mark',
      ],
    ],
    [header.replace('unit', 'units'), ['my.tsv:1:10: unknown column; got "units"; did you mean unit?']],
    [
      header.replace('\tmark', ''),
      [
        'my.tsv:1:1: missing columns: mark; expected the columns id, value, unit, low, high, distribution, conditions, source, page, mark, separated by tabs',
      ],
    ],
    [`${header}\tid`, ['my.tsv:1:65: column given twice; got id']],
    [
      `${header}\naob.growth 0.5`,
      ['my.tsv:2:1: wrong number of cells; got 1; expected 10, separated by tabs'],
    ],
  ])('the shape of %j', (text, messages) => {
    expect(faultsOf(text)).toEqual(messages);
  });
});
