import type { Series } from '@leat/core';

const cell = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** One row per output time: the time in days and every series, each headed `name [unit]`. No number: empty. */
export function csv(
  times: readonly number[],
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
): string {
  const head = ['time [d]', ...series.map(({ name, unit }) => cell(`${name} [${unit}]`))];
  const rows = times.map((time, i) =>
    [time, ...series.map(({ values }) => values[i])].map((value) =>
      Number.isFinite(value) ? String(value) : '',
    ),
  );
  return [head, ...rows].map((row) => `${row.join(',')}\n`).join('');
}
