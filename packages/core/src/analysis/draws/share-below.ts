import { normalQuantile } from '../../library/normal-quantile.js';
import type { TableRow } from '../../library/table-row.js';
import { normalProbability } from './normal-probability.js';

/** Deviate at 95 %: low..high spans 90 %. */
const deviate95 = normalQuantile(0.95);

/** What decides how the number of a row is drawn. */
export type Spread = Pick<TableRow, 'value' | 'low' | 'high' | 'distribution'>;

function triangular({ value, low, high }: Spread, x: number): number {
  if (x <= low) return 0;
  if (x >= high) return 1;
  return x < value
    ? (x - low) ** 2 / ((high - low) * (value - low))
    : 1 - (high - x) ** 2 / ((high - low) * (high - value));
}

/**
 * Share (0..1) of the draws of a row that lie below `x`, in the unit of the row. A fixed row is taken as at its middle.
 */
export function shareBelow(row: Spread, x: number): number {
  const { value, low, high, distribution } = row;
  switch (distribution) {
    case 'fixed':
      return 0.5;
    case 'uniform':
      return Math.min(1, Math.max(0, (x - low) / (high - low)));
    case 'triangular':
      return triangular(row, x);
    case 'normal':
      return normalProbability(((x - value) / (x < value ? value - low : high - value)) * deviate95);
    case 'lognormal':
      return normalProbability(
        (Math.log(x / value) / Math.log(x < value ? value / low : high / value)) * deviate95,
      );
  }
}
