import { seriesOf, type Run } from '@leat/core';

/** Which number of a series: at the start or the end, an extreme, or the day of the highest. */
export type Statistic = 'first' | 'last' | 'highest' | 'lowest' | 'day-of-highest';

/** One number of a run, in the unit of its series; days for `day-of-highest`. */
export function numberOf(run: Run, statistic: Statistic, series: string): number {
  const { values } = seriesOf(run, series);
  switch (statistic) {
    case 'first':
      return values[0];
    case 'last':
      return values[values.length - 1];
    case 'highest':
      return Math.max(...values);
    case 'lowest':
      return Math.min(...values);
    case 'day-of-highest':
      return run.samples[values.indexOf(Math.max(...values))].time;
  }
}
