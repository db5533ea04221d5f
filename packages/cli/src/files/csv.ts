import type { Series } from '@leat/core';
import { visible } from './visible.js';

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

/** One row per output time: the time in days and every series, each headed `name [unit]`. No number: empty. */
export function csv(
  times: readonly number[],
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
): string {
  const head = ['time [d]', ...series.map(({ name, unit }) => `${name} [${unit}]`)];
  return csvText([head, ...times.map((time, i) => [time, ...series.map(({ values }) => values[i])])]);
}
