import { sum } from '../../sum.js';
import type { Stretch } from './stretch.js';

/** Time-weighted mean of the straight lines, over the lines whose ends both have a value. */
function mean({ times, values }: Stretch): number {
  const lines = times
    .slice(1)
    .map((time, i) => ({ width: time - times[i], height: (values[i] + values[i + 1]) / 2 }))
    .filter(({ height }) => !Number.isNaN(height));
  return sum(lines.map(({ width, height }) => width * height)) / sum(lines.map(({ width }) => width));
}

/** The most extreme of the values there are. */
function extreme({ values }: Stretch, sign: 1 | -1): number {
  return values.reduce(
    (best, value) => (Number.isNaN(best) || sign * value > sign * best ? value : best),
    Number.NaN,
  );
}

const first = ({ values }: Stretch): number => values[0];
const last = ({ values }: Stretch): number => values[values.length - 1];

/** One number for a stretch of a series; NaN where no value is there to be counted. */
export const statistics = {
  highest: (stretch) => extreme(stretch, 1),
  lowest: (stretch) => extreme(stretch, -1),
  mean,
  first,
  last,
  change: (stretch) => last(stretch) - first(stretch),
} as const satisfies Readonly<Record<string, (stretch: Stretch) => number>>;

export type StatisticName = keyof typeof statistics;
