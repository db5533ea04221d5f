import { createRandom, csvTable, dateAfter, guessLogMap, readLog, readLogMap } from '@leat/core';
import { describe, expect, it } from 'vitest';

const rows = 1100;
const header = [
  ...['Date', 'Time', 'Ammonia (ppm)', 'NO2 ppm', 'Nitrate ppm', 'pH', 'KH (dKH)', 'DO mg/L', 'Temp F'],
  ...['Fed (g)', 'Feed total', 'Water change %', 'Added', 'Remarks'],
];

/** What was written in a cell, and the bounds of it in the column's unit; null: nothing that is a reading. */
interface Written {
  readonly text: string;
  readonly bounds: readonly [number, number] | null;
}

const random = createRandom(1100);
const one = <T>(choices: readonly T[]): T => choices[Math.floor(random() * choices.length)];
const nothing = (): Written => ({ text: one(['', '', '', '-', 'n/a', 'not tested']), bounds: null });

/** A reading of a card: a step, a bound or the range between two, as people write them. */
function carded(steps: readonly number[]): Written {
  if (random() < 0.5) return nothing();
  const place = Math.floor(random() * (steps.length - 1));
  const [low, high] = [steps[place], steps[place + 1]];
  return one<() => Written>([
    () => ({ text: String(high), bounds: [high, high] }),
    () => ({ text: `<${high}`, bounds: [-Infinity, high] }),
    () => ({ text: `less than ${high}`, bounds: [-Infinity, high] }),
    () => ({ text: `>${high}`, bounds: [high, Infinity] }),
    () => ({ text: `${low}-${high}`, bounds: [low, high] }),
    () => ({ text: `${low} to ${high}`, bounds: [low, high] }),
    () => ({ text: `~${high}`, bounds: [high, high] }),
    () => ({ text: `${high} ppm`, bounds: [high, high] }),
  ])();
}

/** A reading of a meter, with its last place; now and then with a comma. */
function metered(low: number, high: number, places: number): Written {
  if (random() < 0.3) return nothing();
  const text = (low + (high - low) * random()).toFixed(places);
  const value = Number(text);
  return {
    text: places > 0 && random() < 0.05 ? `"${text.replace('.', ',')}"` : text,
    bounds: [value, value],
  };
}

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
function dateText(iso: string): string {
  const [year, month, day] = iso.split('-').map(Number);
  return one([
    `${day}/${month}/${year}`,
    `${String(day).padStart(2, '0')}/${String(month).padStart(2, '0')}/${year}`,
    `${day} ${months[month - 1]} ${year}`,
  ]);
}

/** Columns that are tested, and their unit in what is read. */
const tests = [
  { column: 'Ammonia (ppm)', reads: 'ammonia', write: () => carded([0, 0.25, 0.5, 1, 2]) },
  { column: 'NO2 ppm', reads: 'nitrite', write: () => carded([0, 0.25, 0.5, 1, 2, 5]) },
  { column: 'Nitrate ppm', reads: 'nitrate', write: () => carded([0, 5, 10, 20, 40, 80, 160]) },
  { column: 'pH', reads: 'pH', write: () => metered(6.4, 7.8, 1) },
  { column: 'KH (dKH)', reads: 'alkalinity', write: () => metered(2, 6, 0) },
  { column: 'DO mg/L', reads: 'oxygen', write: () => metered(5, 8, 1) },
  { column: 'Temp F', reads: 'temperature', write: () => metered(68, 80, 1) },
] as const;

const told = Array.from({ length: rows }, (_, i) => {
  const date = dateAfter('2023-03-01', i);
  const readings = tests.map(({ write }) => write());
  const feed = one([60, 65, 70, 0]);
  const change = random() < 0.05 ? one([10, 20, 30]) : undefined;
  const added = random() < 0.05 ? one(['50 g baking soda', '20 g potassium bicarbonate']) : '';
  return { date, readings, feed, change, added };
});
const text = [
  header.join(','),
  ...told.map(({ date, readings, feed, change, added }) =>
    [
      ...[dateText(date), one(['7:30', '8 am', '18:00', '']), ...readings.map((each) => each.text)],
      ...[String(feed), String(feed), change === undefined ? '' : String(change), added],
      one(['', '', 'all well', 'a bit cloudy', 'fish hungry']),
    ].join(','),
  ),
].join('\n');

describe(`a log of ${rows} rows and ${header.length} columns as a stranger would write it (invented)`, () => {
  const table = csvTable(text, 'log.csv');
  const guess = guessLogMap(table, { vessels: ['tank'], cohorts: ['tilapia'] });
  const log = readLog(table, readLogMap(guess.text, 'log.map', table));

  it('is read by the guessed map, every row of it', () => {
    expect(header).toHaveLength(14);
    expect(log.days).toBe(rows);
    expect([log.from, log.to]).toEqual([told[0].date, told[rows - 1].date]);
    expect(guess.columns.filter(({ guess: is }) => is === 'nothing known')).toEqual([]);
  });

  it.each(tests.map((test, i) => ({ ...test, i })))(
    '$column: all readings that were written, and no other',
    ({ column, reads, i }) => {
      const meant = told.flatMap(({ date, readings }) => {
        const { bounds } = readings[i];
        return bounds === null ? [] : [{ date, bounds }];
      });
      const read = log.readings.filter((each) => each.reads === reads);
      expect(read.map(({ date }) => date)).toEqual(meant.map(({ date }) => date));
      // A bound is open where the keeper left it open, nowhere else; zero is where water has no less.
      const open = (low: number, high: number): string =>
        `${low > 0 ? 'from' : ''} ${high < Infinity ? 'to' : ''}`;
      const wrong = read.filter(
        ({ low, high }, k) =>
          low > high || (meant[k].bounds[0] > 0 && open(low, high) !== open(...meant[k].bounds)),
      );
      expect(wrong.map(({ row, text: cell }) => `${column} row ${row}: ${cell}`)).toEqual([]);
    },
  );

  it('feed once, not with its total; what was done; nothing that was plainly written is left out', () => {
    expect(log.feed.reduce((sum, { grams }) => sum + grams, 0)).toBe(
      told.reduce((sum, { feed }) => sum + feed, 0),
    );
    expect(log.actions.filter(({ line }) => line.includes('change-water'))).toHaveLength(
      told.filter(({ change }) => change !== undefined).length,
    );
    expect(log.actions.filter(({ line }) => line.includes('dose'))).toHaveLength(
      told.filter(({ added }) => added !== '').length,
    );
    const leftOut = log.oddities.filter(
      ({ problem, done }) => done.startsWith('left out') && problem !== 'no reading',
    );
    expect(
      leftOut.map(({ row, column, text: cell, problem }) => `${row} ${column} ${cell}: ${problem}`),
    ).toEqual([]);
  });
});
