import { csvTable, guessLogMap, readLog, readLogMap, type WaterLog } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';
import { messageOf } from '../../support/message-of.js';
import { xlsx } from '../../support/xlsx.js';

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

describe('a spreadsheet', () => {
  const date = (row: number): string[] => [`2026-03-0${row}`];
  const formula = (place: string, inner: string): string => `<c r="${place}">${inner}</c>`;
  const rows = [
    ['Date', 'Ammonia'],
    [...date(1), '0.5'],
    [...date(2), formula('B3', '<f>B2*2</f>')],
    [...date(3), '<c r="B4" t="e"><f>1/0</f><v>#DIV/0!</v></c>'],
    [...date(4), formula('B5', '<f t="shared" si="0"/>')],
    [...date(5), formula('B6', '<f>B2*2</f><v>1</v>')],
  ];
  const mapped = map.replace(/ {2}(Nitrite|Feed|Notes).*\n/g, '');
  const said = async (sheets: Parameters<typeof xlsx>[0], ...more: string[]) => {
    const folder = folderWith({ 'log.xlsx': xlsx(sheets), 'log.map': mapped });
    return leat(['log', 'log.xlsx', ...more], folder);
  };

  it('tells of formulas without a value and of errors, and reads a formula with one', async () => {
    const { out, code } = await said({ Log: rows }, '--map', 'log.map');
    expect(code).toBe(0);
    expect(out).toContain('"=B2*2"    a formula whose value the file does not hold: left out');
    expect(out).toContain('"#DIV/0!"  an error of the spreadsheet: left out');
    expect(out).toContain('"="        a formula whose value the file does not hold: left out');
    expect(out).toContain('odd values: 3');
    expect(out).toMatch(/ammonia {3}tank {3}mg N\/L +2 /);
  });

  it('whose text comes of a formula without a value is refused by the cell', async () => {
    const { code, err } = await said({
      Log: [
        ['Date', 'Ammonia'],
        [...date(1), '<c r="B2" t="str"><f>A1</f></c>'],
      ],
    });
    expect([code, err]).toEqual([
      2,
      'log.xlsx: cannot be read as a spreadsheet: cell B2 holds a formula whose value the file does not hold: open it in a spreadsheet program and save it\n',
    ]);
  });

  it('tells that only its first sheet is read, in a guess too', async () => {
    const sheets = { Log: rows.slice(0, 2), 'Fish &amp; feed': [['x']], Old: [['y']] };
    const line = 'only the first, "Log", is read';
    expect((await said(sheets)).out).toContain(`look: 2 more sheets: ${line}`);
    const { out } = await said(sheets, '--map', 'log.map');
    expect(out).toContain(`"Fish & feed, Old"  2 more sheets: ${line}`);
    const one = await said({ Log: rows.slice(0, 2) }, '--map', 'log.map');
    expect(one.out).toContain('nothing odd');
  });
});
