import { seriesOf, type Run } from '@leat/core';

/** Which number of a series: at the start or the end, an extreme, or the day of one. */
export type Statistic = 'first' | 'last' | 'highest' | 'lowest' | 'day-of-highest' | 'day-of-lowest';

/** One number of a run, in the unit of its series; days for the days. Throws as `seriesOf` does. */
export function numberOf(run: Run, statistic: Statistic, series: string): number {
  const { values } = seriesOf(run, series);
  const most = values.reduce((a, b) => Math.max(a, b), -Infinity);
  const least = values.reduce((a, b) => Math.min(a, b), Infinity);
  const timeOf = (value: number): number => run.samples[values.indexOf(value)].time;
  switch (statistic) {
    case 'first':
      return values[0];
    case 'last':
      return values[values.length - 1];
    case 'highest':
      return most;
    case 'lowest':
      return least;
    case 'day-of-highest':
      return timeOf(most);
    case 'day-of-lowest':
      return timeOf(least);
  }
}
