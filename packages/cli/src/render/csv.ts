import type { Series } from '@leat/core';
import { csvText } from './csv-cell.js';

/** One row per output time: the time in days and every series, each headed `name [unit]`. No number: empty. */
export function csv(
  times: readonly number[],
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
): string {
  const head = ['time [d]', ...series.map(({ name, unit }) => `${name} [${unit}]`)];
  return csvText([head, ...times.map((time, i) => [time, ...series.map(({ values }) => values[i])])]);
}
