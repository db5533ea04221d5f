import { csvTable, guessLogMap, readLog, readLogMap, type WaterLog } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { messageOf } from '../../support/message-of.js';

const map = `date: { column: Date }
columns:
  Ammonia: { reads: ammonia, in: tank, unit: mg N/L }
  Nitrite: { reads: nitrite, in: tank, unit: mg N/L }
  Feed: { feed: all, unit: g }
  Notes: notes
`;
const header = 'Date,Ammonia,Nitrite,Feed,Notes';

function read(...rows: readonly string[]): WaterLog {
  const table = csvTable([header, ...rows].join('\n'), 'log.csv');
  return readLog(table, readLogMap(map, 'log.map', table));
}
const told = (log: WaterLog): readonly string[] =>
  log.oddities.map(({ row, column, problem, done }) => `${row} ${column}: ${problem}: ${done}`);

describe('rows that have not as many cells as the header', () => {
  const good = ['2026-03-01,0.5,0.1,70,', '2026-03-02,0.5,0.1,70,', '2026-03-03,0.5,0.1,70,'];

  it('are told each: with more, the row is left out; with fewer, it is read as far as it goes', () => {
    const log = read(...good, '2026-03-04,0,25,0,1,70,fed', '2026-03-05,0.25');
    expect(told(log)).toEqual([
      '5 : 7 cells for the 5 names of the header: the whole row is left out',
      '6 : 2 cells for the 5 names of the header: read as far as it goes',
    ]);
    expect(log.readings.map(({ row, text }) => `${row} ${text}`)).not.toContain('5 0');
    expect(log.readings.filter(({ row }) => row === 6).map(({ text }) => text)).toEqual(['0.25']);
  });

  it('are the fault of a file in which they are most: decimal commas without quotes', () => {
    const slipped = ['2026-03-01,0,25,0,1,70', '2026-03-02,0,5,0,1,70', '2026-03-03,0,5,0,1,70'];
    const fault =
      'log.csv:2: 3 of 3 rows have not as many cells as the header; got 6 cells for 5 names; expected a cell for each name; a decimal comma stands in quotes ("0,25"), or the columns are parted by semicolons or tabs';
    expect(messageOf(() => read(...slipped))).toBe(fault);
    const table = csvTable([header, ...slipped].join('\n'), 'log.csv');
    expect(messageOf(() => guessLogMap(table, { vessels: [], cohorts: [] }))).toBe(fault);
    expect(messageOf(() => read('2026-03-01,0.5', '2026-03-02,0.5'))).toContain('2 of 2 rows');
  });

  it('may lack notes alone, and may have empty cells behind', () => {
    const log = read('2026-03-01,0.5,0.1,70', '2026-03-02,0.5,0.1,70', '2026-03-03,0.5,0.1,70,,,,');
    expect(told(log).map((line) => line.slice(0, 3))).toEqual(['2 :', '3 :']);
    expect(log.readings).toHaveLength(6);
  });

  it('are not taken for others by a column without a name, which is told', () => {
    const table = csvTable('Date,Ammonia,\n2026-03-01,0.5,look here\n2026-03-02,0.5,\n', 'log.csv');
    const log = readLog(table, readLogMap(map.replace(/ {2}(Nitrite|Feed|Notes).*\n/g, ''), 'm', table));
    expect(told(log)).toEqual(['1 : column 3 has no name and holds 1 cells: left out']);
  });
});

describe('a point before three figures', () => {
  it('may part thousands where other numbers have a comma', () => {
    const log = read('2026-03-01,0.5,0.1,"1,000",', '2026-03-02,0.5,0.1,1.000,', '2026-03-03,0.5,0.1,950,');
    expect(told(log)).toEqual([
      '2 Feed: may be 1.000 or 1000: left out',
      '3 Feed: may be 1.000 or 1000: other numbers have a comma: left out',
    ]);
    expect(log.feed.map(({ grams }) => grams)).toEqual([950]);
    const decimal = read('2026-03-01,"0,5",1.250,70,');
    expect(told(decimal)).toContain('2 Nitrite: may be 1.250 or 1250: other numbers have a comma: left out');
  });

  it('is a point where none has', () => {
    const log = read('2026-03-01,0.5,0.1,1.000,"fed, as ever"', '2026-03-02,0.5,1.250,70,');
    expect(told(log)).toEqual([]);
    expect(log.feed.map(({ grams }) => grams)).toEqual([1, 70]);
  });
});

describe('the unit of a header', () => {
  const guessed = (name: string): string => {
    const table = csvTable(`Date,${name}\n2026-03-01,5\n`, 'log.csv');
    const [{ guess, doubt }] = guessLogMap(table, { vessels: ['tank'], cohorts: [] }).columns;
    return `${guess} | ${doubt}`;
  };
  const strange = (what: string, unit: string): string =>
    `${what}, unit not understood | "${unit}" is no unit of ${what}: left out unless the map says what it is`;

  it.each([
    ['Ammonia (kg)', 'ammonia', 'kg'],
    ['Ammonia kg', 'ammonia', 'kg'],
    ['Nitrate [ppb]', 'nitrate', 'ppb'],
    ['Nitrite (g/L)', 'nitrite', 'g/L'],
    ['Alkalinity (g)', 'alkalinity', 'g'],
    ['Alk (mmol/L)', 'alkalinity', 'mmol/L'],
    ['DO (%)', 'oxygen', '%'],
    ['Oxygen % sat', 'oxygen', '%'],
    ['pH (mV)', 'pH', 'mV'],
    ['Volume (kg)', 'volume', 'kg'],
    ['Feed (mL)', 'feed', 'mL'],
  ])('that is not understood is never guessed: %s', (name, what, unit) => {
    expect(guessed(name)).toBe(strange(what, unit));
  });

  it.each([
    ['Chloride (g/L)', 'chloride in tank, g/L | '],
    ['Chloride g/L', 'chloride in tank, g/L | '],
    ['Volume (m3)', 'volume in tank, m3 | '],
    ['Volume (gal)', 'volume in tank, gal | '],
    ['Temperature (K)', 'temperature in tank, K | '],
    ['Feed (lb)', 'feed of all, lb | '],
    ['Feed lbs', 'feed of all, lb | '],
    ['Nitrate (mmol/L)', 'nitrate in tank, mmol/L | '],
    ['NH4 (mg/L NH4+)', 'ammonia in tank, mg/L as NH4 | '],
    ['Alkalinity (meq/L)', 'alkalinity in tank, meq/L | '],
  ])('is taken as it stands: %s', (name, answer) => {
    expect(guessed(name)).toBe(answer);
  });

  it.each([
    ['Ammonia (tank 1)', 'ammonia in tank, mg N/L'],
    ['NH3 (ppm)', 'ammonia in tank, mg N/L'],
    ['NO3 (mg/L NO3)', 'nitrate in tank, mg/L as NO3'],
    ['NO3-N (mg/l)', 'nitrate in tank, mg N/L'],
    ['KH (ppm)', 'alkalinity in tank, mg/L as CaCO3'],
    ['Alkalinity (mg/L CaCO3)', 'alkalinity in tank, mg/L as CaCO3'],
    ['pH (probe)', 'pH in tank'],
    ['Temp (°C)', 'temperature in tank, degC'],
    ['DO mg/l', 'oxygen in tank, mg/L'],
    ['Feed (cups)', 'feed of all, cup'],
  ])('is guessed as before where it is usual or none: %s', (name, answer) => {
    expect(guessed(name).split(' | ')[0]).toBe(answer);
  });
});
