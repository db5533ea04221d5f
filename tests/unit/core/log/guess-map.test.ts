import { describe, expect, it } from 'vitest';
import { guessLogMap } from '../../../../packages/core/src/log/guess-map.js';
import { csvTable, logTable } from '../../../../packages/core/src/log/log-table.js';
import { raggedRows, refuseRagged } from '../../../../packages/core/src/log/ragged.js';
import { unitInHeader } from '../../../../packages/core/src/log/header-unit.js';

const one = { vessels: ['tank'], cohorts: [] };
const guessOf = (
  header: string,
  values: readonly (string | number)[] = [5],
  system: Parameters<typeof guessLogMap>[1] = one,
) =>
  guessLogMap(
    csvTable(
      `Date,${header}\n${values.map((value, i) => `2026-03-${String(i + 1).padStart(2, '0')},${value}\n`).join('')}`,
      'log.csv',
    ),
    system,
  );
const columnOf = (...given: Parameters<typeof guessOf>): string => {
  const [{ guess, doubt }] = guessOf(...given).columns;
  return `${guess} | ${doubt}`;
};

describe('the unit of a column whose header says none', () => {
  const told = 'told by the size of the numbers';

  it.each([
    ['Alkalinity', [24, 25, 25], `alkalinity in tank, dKH | ${told}`],
    ['Alkalinity', [25, 25.5, 26], `alkalinity in tank, mg/L as CaCO3 | ${told}`],
    ['Alkalinity', ['', '?'], `alkalinity in tank, dKH | ${told}`],
    ['Temperature', [44, 45, 46], `temperature in tank, degC | ${told}`],
    ['Temperature', [45, 45.5, 46], `temperature in tank, degF | ${told}`],
    ['Temp F', [20], 'temperature in tank, degF | '],
    ['Temp (C)', [80], 'temperature in tank, degC | '],
    ['Volume', [5], 'volume in tank, L | the header does not say the unit'],
    ['pH', [7], 'pH in tank | '],
    ['Nitrite', [1], 'nitrite in tank, mg/L as NO2 | many kits show the ion, some nitrogen: then "mg N/L"'],
    ['Nitrate-N', [1], 'nitrate in tank, mg N/L | '],
    ['TAN', [1], 'ammonia in tank, mg N/L | '],
  ])('%s of %j', (header, values, answer) => {
    expect(columnOf(header, values)).toBe(answer);
  });

  it.each([
    ['Feed (g)', 'feed of all, g | '],
    ['Feed grams', 'feed of all, g | '],
    ['Feed kg', 'feed of all, kg | '],
    ['Food oz', 'feed of all, oz | '],
    ['Fed cups', 'feed of all, cup | weigh one cup and write it under measures'],
    ['Fed scoop', 'feed of all, scoop | weigh one scoop and write it under measures'],
    ['Fed', 'feed of all, g | the header does not say the unit'],
  ])('feed: %s', (header, answer) => {
    expect(columnOf(header)).toBe(answer);
  });

  it('of water temperature may be a letter alone', () => {
    expect(columnOf('Water C')).toBe('temperature in tank, degC | ');
    expect(columnOf('Water F')).toBe('temperature in tank, degF | ');
  });

  it('is not that of another quantity: so many mg/L of heat or of water are none', () => {
    expect(columnOf('Temp (mg/L)')).toContain('unit not understood');
    expect(columnOf('Volume (mg/L)')).toContain('unit not understood');
    expect(columnOf('Nitrate (ppm)')).toContain('nitrate in tank, mg/L as NO3');
  });
});

describe('the vessel of a column', () => {
  const which = 'which vessel is not said: tank-1 is taken';
  const two = { vessels: ['tank-1', 'tank-10'], cohorts: ['young', 'old'] };

  it('is the one that the header names, the longest name that fits', () => {
    expect(columnOf('Nitrate-N tank 10', [5], two)).toBe('nitrate in tank-10, mg N/L | ');
    expect(columnOf('Nitrate-N TANK1', [5], two)).toBe('nitrate in tank-1, mg N/L | ');
  });

  it('is the first where none is named and there are several, which is told', () => {
    expect(columnOf('Nitrate-N', [5], two)).toBe(`nitrate in tank-1, mg N/L | ${which}`);
    expect(columnOf('Volume', [5], two)).toBe(
      `volume in tank-1, L | the header does not say the unit; ${which}`,
    );
    expect(columnOf('Nitrate-N', [5])).toBe('nitrate in tank, mg N/L | ');
  });

  it('is no matter to feed, which goes to the fish that the header names', () => {
    expect(columnOf('Feed old (g)', [5], two)).toBe('feed of old, g | ');
  });
});

describe('two columns of one quantity', () => {
  it('are two kits of a vessel, each by its name, where no header names another vessel', () => {
    const { columns, text } = guessOf('pH pen,pH drops,pH pond', ['7.1,7.2,7.3'], {
      vessels: ['tank', 'pond'],
      cohorts: [],
    });
    expect(text).toContain('    in: tank\n    instrument: pH pen\n');
    expect(text).toContain('    in: tank\n    instrument: pH drops\n');
    expect(text).toMatch(/in: pond\n$/);
    expect(columns[0].doubt).toContain('read beside pH drops: taken as two kits or meters of one vessel');
  });
});

describe('a table that is no log', () => {
  it('is a fault that names the other sheets', () => {
    const table = logTable([['My farm'], ['x']], 'book.xlsx', {
      oddities: [
        { row: 1, column: '', text: 'Water, Old', problem: '2 more sheets', done: 'only the first is read' },
      ],
    });
    expect(() => guessLogMap(table, one)).toThrow(
      /no column of a test, of feed or of what was done is told by its name; got "?My farm"?; expected .*--sheet: Water, Old/,
    );
  });
});

describe('the map that is written', () => {
  it('is this text', () => {
    expect(guessOf('pH,TAN,Feed (cups),Notes,Weather', ['7,1,2,,']).text).toBe(`version: 1
date:
  column: Date
columns:
  pH:
    reads: pH
    in: tank
  TAN:
    reads: ammonia
    in: tank
    unit: mg N/L
  Feed (cups):
    feed: all
    unit: cup
  Notes: notes
  Weather: skip
measures:
  cup: WEIGH ONE, such as 110 g
`);
  });

  it('has no measures where none is used, and the row of the header where it is not the first', () => {
    const table = csvTable('My log,,\nDate,pH,TAN\n2026-03-01,7,1\n', 'log.csv');
    const { text } = guessLogMap(table, one);
    expect(text).toContain('header: 2\n');
    expect(text).not.toContain('measures');
    expect(guessOf('pH').text).not.toContain('header');
  });

  it('tells of rows with more cells than the header', () => {
    expect(guessOf('pH', ['7', '7,1', '7', '7']).doubts).toEqual([
      'rows with more cells than the header, which are left out: 3',
    ]);
    expect(guessOf('pH', ['7', '7']).doubts).toEqual([]);
  });
});

describe('a unit in a header', () => {
  it.each([
    ['Ammonia', undefined],
    ['Ammonia (tank 1)', undefined],
    ['NO3 [mg/L as NO3]', 'mg/L as NO3'],
    ['NO3 (mg/l no3-n)', 'mg/L as N'],
    ['Hardness {ppm CaCO3}', 'ppm as CaCO3'],
    ['NH4 (ppm NH4+)', 'ppm as NH4'],
    ['Nitrate (tank) [mmol/L]', 'mmol/L'],
    ['Feed (lbs)', 'lb'],
    ['Feed (grams)', 'g'],
    ['Depth (ft)', 'ft'],
    ['Chloride g/L', 'g/L'],
    ['Chloride, mg/L', 'mg/L'],
    ['Volume gal', 'gal'],
    ['Power (kW)', 'kW'],
  ])('%s: %s', (header, unit) => {
    expect(unitInHeader(header)).toBe(unit);
  });
});

describe('ragged rows', () => {
  const table = (...rows: readonly string[]) => csvTable(`Log\nDate,A,B\n${rows.join('\n')}\n`, 'log.csv');

  it('have more cells than the header, or fewer; blank ones and empty cells behind are none', () => {
    expect(raggedRows(table('1,2,3', '1,2', '1,2,3,4', ',,,,', '1,2,3,,,', '1,2,,4'), 2)).toEqual([
      { row: 4, cells: 2, long: false },
      { row: 5, cells: 4, long: true },
      { row: 8, cells: 4, long: true },
    ]);
  });

  it('are all of those below where there is no header, and none where nothing stands in the others', () => {
    const blank = logTable(
      [
        ['Date', 'A'],
        ['1', '2', '3'],
        ['', ''],
        ['', ''],
      ],
      'log.csv',
    );
    expect(() => {
      refuseRagged(blank, 1, raggedRows(blank, 1));
    }).toThrow('1 of 1 rows have not as many cells as the header');
    expect(raggedRows(blank, 9)).toEqual([]);
  });

  it('are a fault where they are more than half', () => {
    const refused =
      (...rows: readonly string[]) =>
      () => {
        const log = table(...rows);
        refuseRagged(log, 2, raggedRows(log, 2));
      };
    expect(refused('1,2,3', '1,2,3,4')).not.toThrow();
    expect(refused('1,2,3', '1,2,3,4', '1,2,3,4', '1,2,3')).not.toThrow();
    expect(refused('1,2,3,4', '1,2,3,4', '1,2,3')).toThrow(
      'log.csv:3: 2 of 3 rows have not as many cells as the header; got 4 cells for 3 names; expected a cell for each name',
    );
  });
});
