import type { Run, Series } from '@leat/core';
import { day, placeOf, quantityPhrase, short, shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

const bars = '▁▂▃▄▅▆▇█';

/**
 * A small line of the course of values: each letter the mean of its part, from lowest to highest of those
 * means; level where they do not differ; a blank where there are no numbers.
 */
export function sparkline(values: ArrayLike<number>, letters: number): string {
  const count = Math.min(letters, values.length);
  const means = Array.from({ length: count }, (_, i) => {
    const from = Math.floor((i * values.length) / count);
    const to = Math.floor(((i + 1) * values.length) / count);
    const part = Array.from(values).slice(from, to).filter(Number.isFinite);
    return part.reduce((total, value) => total + value, 0) / part.length;
  });
  const known = means.filter(Number.isFinite);
  const low = Math.min(...known);
  const high = Math.max(...known);
  return means
    .map((mean) => {
      if (!Number.isFinite(mean)) return ' ';
      const share = high - low > 1e-9 * Math.abs(high) ? (mean - low) / (high - low) : 0;
      return bars[Math.min(bars.length - 1, Math.floor(share * bars.length))];
    })
    .join('');
}

/** A row of the summary: a series under a plain name, in a unit for reading. */
interface Key {
  readonly label: string;
  readonly series: string;
  readonly unit?: string;
  readonly factor?: number;
}

const water = [
  'tan',
  'un-ionised-ammonia',
  'nitrite',
  'nitrate',
  'pH',
  'alkalinity',
  'oxygen',
  'chloride',
] as const;

/** Most cohorts and plantings shown one by one in a summary. */
const most = 2;

/** The rows: the water of the first fish tank (or the reservoir), the level, stock and crops. */
function keysOf(run: Run, count: number): readonly Key[] {
  const { reservoir, fish: cohorts, plantings } = run.model.scenario;
  const home = cohorts[0]?.vessel ?? reservoir;
  return [
    ...water.map((quantity) => ({ label: quantityPhrase(quantity), series: `${quantity}@${home}` })),
    { label: 'water', series: `volume@${reservoir}` },
    ...cohorts
      .slice(0, count)
      .map(({ name }) => ({ label: 'fish', series: `fish-mass@${name}`, unit: 'kg', factor: 1e-3 })),
    ...(cohorts.length > 0 ? [{ label: 'feed', series: 'feed@system' }] : []),
    ...plantings
      .slice(0, count)
      .map(({ name }) => ({ label: 'crop', series: `crop-mass@${name}`, unit: 'kg dry', factor: 1e-3 })),
  ];
}

/** Names of the series that say most of a run, in the order of the summary: every cohort and every planting. */
export function keySeries(run: Run): readonly string[] {
  return keysOf(run, Infinity).map(({ series }) => series);
}

/** Where the lowest or highest of some values stands: of those that are equally so, the first; -1 where there is none. */
export function extreme(values: readonly number[], better: (a: number, b: number) => boolean): number {
  let best = -1;
  values.forEach((value, i) => {
    if (!Number.isNaN(value) && (best < 0 || better(value, values[best]))) best = i;
  });
  return best;
}

/** Letters of a course on a screen of 100, and the narrowest that says anything. */
const courseLetters = 16;
const leastLetters = 6;

/**
 * The table of key quantities: start, end, lowest and highest with their days, and the course as far as the screen has
 * room for one.
 * @param wide letters of a line
 */
export function keyQuantities(run: Run, series: readonly Series[], wide: number): readonly string[] {
  const times = run.samples.map(({ time }) => time);
  const known = new Map(series.map((each) => [each.name, each]));
  const rows = keysOf(run, most).flatMap(({ label, series: name, unit, factor = 1 }) => {
    const found = known.get(name);
    if (found === undefined) return [];
    const values = Array.from(found.values, (value) => value * factor);
    const low = extreme(values, (a, b) => a < b);
    const high = extreme(values, (a, b) => a > b);
    const at = (index: number): readonly [string, string] => [shown(values[index]), `d ${day(times[index])}`];
    return [
      [
        label,
        short(placeOf(name), 12),
        unit ?? found.unit,
        shown(values[0]),
        shown(values[values.length - 1]),
        ...at(low),
        ...at(high),
        values,
      ],
    ] as const;
  });
  const head = ['', 'where', 'unit', 'start', 'end', 'lowest', '', 'highest', ''];
  const cells = rows.map((row) => row.slice(0, -1) as readonly string[]);
  const sides = ['left', 'left', 'left', 'right', 'right', 'right', 'left', 'right', 'left'] as const;
  const table = columns([head, ...cells], sides);
  const used = Math.max(...table.map((line) => Array.from(line).length)) + 2;
  const room = Math.min(wide - used, wide <= 100 ? courseLetters : 2 * courseLetters);
  if (room < leastLetters) return table;
  const courses = rows.map((row) => sparkline(row[row.length - 1] as readonly number[], room));
  return columns(
    [[...head, 'over time'], ...cells.map((row, i) => [...row, courses[i]])],
    [...sides, 'left'],
  );
}
