import type { Series } from '@leat/core';
import { columnsOf, datesOf } from './columns.js';
import { visible } from '../text/index.js';

/** What a spreadsheet may take for a formula where a cell begins with it, in the wide letters of East Asia too. */
const formula = /^\s*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;

/**
 * One cell of CSV. A number stays as it is, and is empty where it is none; a text that a spreadsheet would run as a
 * formula is led by an apostrophe, which spreadsheets take for "this is text".
 */
export function csvCell(value: number | string): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const seen = visible(value);
  const safe = formula.test(value) ? `'${seen}` : seen;
  return /[",;\n\r\t]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows of cells as CSV text. */
export const csvText = (rows: readonly (readonly (number | string)[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(',')}\n`).join('');

/**
 * One row per output time: the time in days, its date where the date of day 0 is given, and every series, each headed by a
 * name that R and Python take as it is (`tan_tank_mg_N_per_L`). No number: empty.
 */
export function csv(
  times: readonly number[],
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
  startDate?: string,
): string {
  const columns = columnsOf(series);
  const dates = startDate === undefined ? undefined : datesOf(startDate, times);
  const head = ['time_d', ...(dates ? ['date'] : []), ...columns.map(({ column }) => column)];
  const rows = times.map((time, i) => [
    ...[time, ...(dates ? [dates[i]] : [])],
    ...columns.map(({ values }) => values[i]),
  ]);
  return csvText([head, ...rows]);
}

/** One row per value: the time in days, its date, quantity, place, unit and value. */
export function longCsv(
  times: readonly number[],
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
  startDate: string,
): string {
  const dates = datesOf(startDate, times);
  const rows = series.flatMap(({ name, unit, values }) => {
    const [quantity, place] = name.split('@');
    return times.map((time, i) => [time, dates[i], quantity, place, unit, values[i]]);
  });
  return csvText([['time_d', 'date', 'quantity', 'place', 'unit', 'value'], ...rows]);
}
