import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLogMap } from '../../../../packages/core/src/log/read-map.js';
import { readLog } from '../../../../packages/core/src/log/read-log.js';
import { csvTable } from '../../../../packages/core/src/log/log-table.js';
import { full } from '../../../support/length.js';
import { naiveDate, naiveReadings, type NaiveColumn } from './naive-log.js';

/** Logs that are made and read by both readers; `npm run fuzz` and the full run make 10,000. */
const logs = full || process.env['FUZZ'] !== undefined ? 10_000 : 200;

interface Kit extends NaiveColumn {
  readonly map: string;
  /** Figures as they may be written. */
  readonly figures: fc.Arbitrary<string>;
}

const decimal = (low: number, high: number, most: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.double({ min: low, max: high, noNaN: true }), fc.integer({ min: 0, max: most }))
    .map(([value, places]) => value.toFixed(places));

const kits: readonly Kit[] = [
  {
    name: 'TAN',
    map: '{ reads: ammonia, in: tank, unit: mg N/L, steps: [0, 0.25, 0.5, 1, 2, 4, 8] }',
    steps: [0, 0.25, 0.5, 1, 2, 4, 8],
    factor: 1,
    offset: 0,
    figures: fc.constantFrom('0', '0.25', '0.5', '1', '1.0', '2', '4', '8', '0.3', '3', '0.50', '5e-1', '9'),
  },
  {
    name: 'NO2',
    map: '{ reads: nitrite, in: tank, unit: mg/L as NO2 }',
    factor: 14.007 / 46.005,
    offset: 0,
    figures: decimal(0, 20, 3),
  },
  {
    name: 'NO3',
    map: '{ reads: nitrate, in: tank, unit: ppm as NO3 }',
    factor: 14.007 / 62.004,
    offset: 0,
    figures: fc.oneof(decimal(0, 300, 1), fc.constantFrom('1e2', '2.5e1', '12e-1')),
  },
  {
    name: 'pH',
    map: '{ reads: pH, in: tank, resolution: 0.2 }',
    resolution: 0.2,
    factor: 1,
    offset: 0,
    figures: decimal(5, 9, 2),
  },
  {
    name: 'KH',
    map: '{ reads: alkalinity, in: tank, unit: dKH }',
    factor: 10 / 28.0385,
    offset: 0,
    figures: decimal(1, 12, 2),
  },
  {
    name: 'Temp',
    map: '{ reads: temperature, in: tank, unit: F }',
    factor: 5 / 9,
    offset: -160 / 9,
    figures: decimal(40, 95, 1),
  },
];

const comma = (text: string): string => (/^[1-9]\d{0,2}\.\d{3}$/.test(text) ? text : text.replace('.', ','));

/** A cell in one of the ways in which people write one. */
const cellOf = ({ figures }: Kit): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 6, arbitrary: figures },
    { weight: 1, arbitrary: figures.map(comma) },
    { weight: 1, arbitrary: figures.map((text) => `<${text}`) },
    { weight: 1, arbitrary: figures.map((text) => `> ${text}`) },
    { weight: 1, arbitrary: figures.map((text) => `${text}+`) },
    { weight: 1, arbitrary: figures.map((text) => `~${text}`) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(figures, figures)
        .map((pair) => [...pair].sort((a, b) => Number(a) - Number(b)).join(' to ')),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        '',
        '-',
        'n/a',
        'none',
        '?',
        'trace',
        'high',
        '7..2',
        '1e400',
        '\u2212' + '1',
      ),
    },
  );

/** A month: day 31 of those that have none is no date. */
const date = (dayFirst: boolean): fc.Arbitrary<string> =>
  fc
    .record({
      year: fc.integer({ min: 2023, max: 2029 }),
      month: fc.integer({ min: 1, max: 12 }),
      day: fc.integer({ min: 1, max: 31 }),
      form: fc.integer({ min: 0, max: 4 }),
      time: fc.constantFrom(
        '',
        '',
        '',
        ' 7:30',
        ' 17:05',
        ' 12:15 am',
        ' 12:15 pm',
        ' 9:45 pm',
        ' 10:75',
        ' 13:00 pm',
        ' 25:00',
      ),
    })
    .map(({ year, month, day, form, time }) => {
      const two = (n: number): string => String(n).padStart(2, '0');
      const [first, second] = dayFirst ? [day, month] : [month, day];
      const name = [
        'Jan',
        'February',
        'mar',
        'Apr',
        'MAY',
        'June',
        'Jul',
        'Aug',
        'Sept',
        'October',
        'Nov',
        'dec',
      ][month - 1];
      const written = [
        `${year}-${two(month)}-${two(day)}`,
        `${first}/${second}/${year}`,
        `${two(first)}.${two(second)}.${year % 100}`,
        `${day} ${name} ${year}`,
        `${name} ${day} ${year}`,
      ];
      return written[form] + time;
    });

const log = fc.boolean().chain((dayFirst) =>
  fc.record({
    dayFirst: fc.constant(dayFirst),
    kits: fc.shuffledSubarray([...kits], { minLength: 1 }),
    rows: fc.array(fc.record({ date: date(dayFirst), cells: fc.tuple(...kits.map(cellOf)) }), {
      minLength: 1,
      maxLength: 8,
    }),
  }),
);

const quoted = (cell: string): string => (/[",]/.test(cell) ? `"${cell}"` : cell);
const near = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(a));

describe('a log read twice', () => {
  it('says the same to the reader of the library and to one that knows nothing of it', () => {
    let compared = 0;
    let told = 0;
    fc.assert(
      fc.property(log, ({ dayFirst, kits: columns, rows }) => {
        const text = [
          ['Date', ...columns.map(({ name }) => name)],
          ...rows.map(({ date: at, cells }) => [at, ...columns.map((kit) => cells[kits.indexOf(kit)])]),
        ]
          .map((cells) => `${cells.map(quoted).join(',')}\n`)
          .join('');
        const order = dayFirst ? 'day-month-year' : 'month-day-year';
        const map = `date: { column: Date, order: ${order} }\ncolumns:\n${columns.map(({ name, map: of }) => `  ${name}: ${of}\n`).join('')}`;
        const table = csvTable(text, 'log.csv');
        const read = readLog(table, readLogMap(map, 'log.map', table));
        const mine = naiveReadings(text, columns, dayFirst);
        const theirs = [...read.readings].sort((a, b) => a.row - b.row || a.column.localeCompare(b.column));
        const oddAt = new Set(read.oddities.map(({ row, column }) => `${row} ${column}`));
        for (const { row, column } of mine) {
          // What no water can be is left out, and told: it is the only thing that the naive reader does not know.
          const found = theirs.some((each) => each.row === row && each.column === column);
          if (!found)
            expect(oddAt.has(`${row} ${column}`), `${row} ${column} is gone without a word\n${text}`).toBe(
              true,
            );
        }
        for (const reading of theirs) {
          const own = mine.find(({ row, column }) => row === reading.row && column === reading.column);
          const where = `row ${reading.row}, ${reading.column}, "${reading.text}"\n${text}`;
          if (own === undefined) throw new Error(`read from nothing: ${where}`);
          const day = Date.parse(`${reading.date}T00:00:00Z`) / 86_400_000;
          expect([day, near(reading.hour, own.hour)], where).toEqual([own.day, true]);
          expect(
            [reading.low, reading.high].every((each, i) => near(each, [own.low, own.high][i])),
            `${where}${reading.low} ${reading.high} ${own.low} ${own.high}`,
          ).toBe(true);
          compared++;
        }
        // Whatever was written and is not read is told: its cell, or the whole row.
        for (const [i, { date: at, cells }] of rows.entries()) {
          const row = i + 2;
          const dated = naiveDate(at, dayFirst) !== undefined;
          expect(oddAt.has(`${row} Date`) || dated, `row ${row} has no date and is not told\n${text}`).toBe(
            true,
          );
          for (const kit of columns) {
            const cell = cells[kits.indexOf(kit)];
            const kept = theirs.some((each) => each.row === row && each.column === kit.name);
            if (kept || cell === '' || !dated) continue;
            expect(oddAt.has(`${row} ${kit.name}`), `${row} ${kit.name} "${cell}" is not told\n${text}`).toBe(
              true,
            );
            told++;
          }
        }
      }),
      { seed: 20, numRuns: logs },
    );
    expect(compared).toBeGreaterThan(logs * 4);
    expect(told).toBeGreaterThan(logs / 4);
  });
});
