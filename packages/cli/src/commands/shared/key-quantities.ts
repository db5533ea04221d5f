import type { Run, Series } from '@leat/core';
import { keysOf } from '@leat/view/documents';
import {
  dateNames,
  day,
  type Display,
  extreme,
  placeOf,
  placeText,
  plainDisplay,
  quantityOf,
  short,
} from '@leat/view/text';
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

/** Most cohorts and plantings shown one by one in a summary. */
const most = 2;

/** Letters of a course on a screen of 100, and the narrowest that says anything. */
const courseLetters = 16;
const leastLetters = 6;

/** A row of the table of key quantities: its cells, and the values of its course. */
interface KeyRow {
  readonly cells: readonly string[];
  readonly values: readonly number[];
}

/** The rows, days told by `at`. */
function keyRows(
  run: Run,
  series: readonly Series[],
  at: (time: number) => string,
  display: Display,
): readonly KeyRow[] {
  const times = run.samples.map(({ time }) => time);
  const known = new Map(series.map((each) => [each.name, each]));
  return keysOf(run, most, display).flatMap(({ label, series: name, unit, factor = 1 }) => {
    const found = known.get(name);
    if (found === undefined) return [];
    const of = unit ?? found.unit;
    const quantity = quantityOf(name);
    const values = Array.from(found.values, (value) => display.value(value * factor, of, quantity));
    const low = extreme(values, (a, b) => a < b);
    const high = extreme(values, (a, b) => a > b);
    const told = display.unit(of, quantity);
    return [
      {
        values,
        cells: [
          label,
          short(placeText(placeOf(name), display), 12),
          told === '' ? display.words.text.unit(of) : told,
          display.number(values[0]),
          display.number(values[values.length - 1]),
          ...[display.number(values[low]), at(times[low])],
          ...[display.number(values[high]), at(times[high])],
        ],
      },
    ];
  });
}

/**
 * The table of key quantities: start, end, lowest and highest with their days, and their dates and the course as far as
 * the screen has room for them.
 * @param wide letters of a line
 */
export function keyQuantities(
  run: Run,
  series: readonly Series[],
  wide: number,
  display: Display = plainDisplay,
): readonly string[] {
  const words = display.words.run;
  const { where, unit, start, end, lowest, highest, overTime } = words.keys;
  const head = ['', where, unit, start, end, lowest, '', highest, ''];
  const sides = ['left', 'left', 'left', 'right', 'right', 'right', 'left', 'right', 'left'] as const;
  const widest = (lines: readonly string[]): number =>
    Math.max(...lines.map((line) => Array.from(line).length));
  const tableOf = (rows: readonly KeyRow[]): readonly string[] =>
    columns([head, ...rows.map(({ cells }) => cells)], sides);
  const dates = dateNames(run.model.scenario.startDate, display);
  const dated = keyRows(run, series, (time) => words.dayAndDate(day(time, display), dates(time)), display);
  const bare = keyRows(run, series, (time) => words.day(day(time, display)), display);
  const rows = widest(tableOf(dated)) <= wide ? dated : bare;
  const table = tableOf(rows);
  const room = Math.min(wide - widest(table) - 2, wide <= 100 ? courseLetters : 2 * courseLetters);
  if (room < leastLetters) return table;
  return columns(
    [[...head, overTime], ...rows.map(({ cells, values }) => [...cells, sparkline(values, room)])],
    [...sides, 'left'],
  );
}
