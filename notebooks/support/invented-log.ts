import type { LogColumns } from './blank-log.js';
import { createRandom, dateAfter, seriesOf, type Run } from '@leat/core';

/** A reading as a kit shows it: the true value with an error, in whole steps. */
function read(value: number, error: number, step: number): string {
  const shown = Math.max(0, Math.round((value * (1 + error)) / step) * step);
  return step < 1 ? shown.toFixed(2) : shown.toFixed(0);
}

/**
 * A log of water tests that nobody kept: a run read off every `every` days with the errors and steps of a drop kit.
 * @returns CSV with the columns date, ammonia, nitrite and nitrate of the tank, in mg N/L
 */
export function inventedLog(
  run: Run,
  tank: string,
  columns: LogColumns,
  every: number,
  seed: number,
): string {
  const random = createRandom(seed);
  const error = (): number => 0.3 * (random() + random() + random() - 1.5);
  const { startDate, days } = run.model.scenario;
  const courses = ['tan', 'nitrite', 'nitrate'].map((name) => seriesOf(run, `${name}@${tank}`));
  const steps = [0.25, 0.25, 5];
  const rows = Array.from({ length: Math.floor(days / every) + 1 }, (_, i) => {
    const cells = courses.map((course, j) => read(course.at(i * every), error(), steps[j]));
    return [dateAfter(startDate, i * every), ...cells].join(',');
  });
  const { date, ammonia, nitrite, nitrate } = columns;
  return [[date, ammonia, nitrite, nitrate].join(','), ...rows].join('\n');
}
