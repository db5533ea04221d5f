import { describe, expect, it } from 'vitest';
import { readInvented } from '../../support/invented-log.js';

const map = [
  'date: { column: Date }',
  'columns:',
  '  TAN: { reads: ammonia, in: tank, unit: mg N/L, steps: [0, 0.25, 0.5, 1] }',
  '  pH: { reads: pH, in: tank }',
  '  KH: { reads: alkalinity, in: tank, unit: dKH, resolution: 1 }',
  '  DO: { reads: oxygen, in: tank, unit: mg/L }',
  '  Feed: { feed: all, unit: g }',
  '  Notes: notes',
  '',
].join('\n');
const columns = ['Date', 'TAN', 'pH', 'KH', 'DO', 'Feed', 'Notes'];

/** What is said of a log, `row column: problem: what was done`. */
const said = (rows: readonly string[], header = columns.join(','), by = map): readonly string[] =>
  readInvented(`${[header, ...rows].join('\n')}\n`, by).oddities.map(
    ({ row, column, problem, done }) => `${row} ${column}: ${problem}: ${done}`,
  );

/** What is said of one cell, and what is kept of it. */
const cell = (column: string, text: string): string => {
  const row = columns.map((name) => (name === 'Date' ? '2026-03-01' : name === column ? `"${text}"` : ''));
  const [first, ...more] = said([row.join(',')]);
  expect(more).toEqual([]);
  return first.replace(`2 ${column}: `, '');
};

const action = (line: string): string =>
  `something was done to the system: not acted on; in the scenario: { at: 2026-03-01, ${line} }`;

describe('the report of an odd cell', () => {
  it.each([
    ['pH', '2', 'no pH is so low: left out'],
    ['pH', '7 mg/L', 'pH has no unit ("mg/L"): left out'],
    ['TAN', '-1', 'no ammonia is so low: left out'],
    ['TAN', '1e999', 'not a finite number: left out'],
    ['TAN', '2', 'between the steps of the kit: kept as at least 1 mg N/L'],
    ['TAN', '>1 mg N/L', 'more than the kit shows: kept as at least 1 mg N/L'],
    ['TAN', '<0.5 dKH', 'wrong dimension: this is an alkalinity ("dKH"): left out'],
    ['TAN', '0.5 mg/L as NO2', 'wrong dimension: this is a nitrite nitrogen ("mg/L as NO2"): left out'],
    // Not read off the card of the column, so its steps say nothing of it.
    [
      'TAN',
      '0.5 mg/L as NH4',
      "another unit than the column's (mg/L as NH4): kept as 0.45 to 0.55 mg/L as NH4",
    ],
    ['KH', '70 ppm', "another unit than the column's (ppm): kept as 69.5 to 70.5 mg/L as CaCO3"],
    ['KH', '1.4 meq/L', "another unit than the column's (meq/L): kept as 1.35 to 1.45 meq/L"],
    ['KH', '5 furlong', 'unknown unit "furlong": left out'],
    ['DO', 'trace', 'a trace of unknown size: the map gives no steps and no resolution: left out'],
    ['DO', '20-10', 'a range that runs backwards: left out'],
    ['Feed', '-5', 'less than nothing: left out'],
    ['Feed', '<5', 'feed without a bound: left out'],
    ['Feed', '20-30', 'a range: kept as 25 g'],
    ['Feed', '1,200', 'may be 1.200 or 1200: left out'],
    ['Feed', 'lots', 'not a number: left out'],
    ['Notes', 'KOH, 20 grams', action('dose: { into: VESSEL, product: potassium-hydroxide, mass: 20 g }')],
    ['Notes', 'salt', action('dose: { into: VESSEL, product: sodium-chloride, mass: MASS }')],
    ['Notes', '10% wc', action('change-water: { vessel: VESSEL, share: 10 %, water: WATER }')],
    ['Notes', 'new 12 tilapia', action('stock: { cohort: COHORT, number: 12, mass: MASS }')],
    ['Notes', 'lost 2', action('lose-fish: { cohort: COHORT, number: 2 }')],
  ])('%s: %s', (column, text, expected) => {
    expect(cell(column, text)).toBe(expected);
  });
});

describe('the report of odd dates', () => {
  it('rows without a date that can be read are left out, each with its reason', () => {
    const rows = [',0.5', '5 Mar,0.5', '1/1/1899,0.5', '2026-03-05,0.5', 'not yet,0.5'];
    expect(said(rows.map((row) => `${row},,,,,`))).toEqual([
      '2 Date: no date: the whole row is left out',
      '3 Date: a date without a year, and none above it has one: the whole row is left out',
      '4 Date: no log is of the year 1899: the whole row is left out',
      '6 Date: not a date: the whole row is left out',
    ]);
  });

  it('day and month that only the rows tell apart are told', () => {
    const rows = ['3/4/26', '3/5/26', '3/6/26', '3/7/26'].map((date) => `${date},0.5,,,,,`);
    expect(said(rows)).toEqual([
      '1 Date: day and month could be either way round: read as month-day-year, because then the rows run on day by day',
    ]);
  });

  it.each([
    [['3/4/26', '5/6/26'], 'the dates do not say whether day or month comes first'],
    [['13/4/26', '5/16/26'], 'some dates have the day first, others the month'],
  ])('%j are a fault', (dates, problem) => {
    expect(() => said(dates.map((date) => `${date},0.5,,,,,`))).toThrow(
      `log.csv: Date: ${problem}; expected in the map, date: { column: ..., order: day-month-year } or month-day-year`,
    );
  });
});

it('columns of one name, and columns that the map does not name, are told', () => {
  const short = map.split('\n').slice(0, 4).join('\n');
  expect(said(['2026-03-01,0.5,0.25,7.0,x'], 'Date,TAN,TAN,pH,other', short)).toEqual([
    '1 TAN: two columns of one name: both are read alike',
    '1 other: a column that the map does not name: left out',
  ]);
});
