import { normalCdf } from '../library/normal-cdf.js';
import { normalQuantile } from '../library/normal-quantile.js';
import { quantile } from '../library/quantile.js';
import type { TableRow } from '../library/table-row.js';

/** What was held of a number before the log: low..high as in the tables. */
export type Prior = Pick<TableRow, 'value' | 'low' | 'high' | 'distribution'>;

/**
 * The number at a standard deviate: -1.645 is its 5 % point, 0 its median, 1.645 its 95 % point. So every prior is a
 * standard normal in the deviate, and hard bounds lie at infinity.
 */
export function valueAt(prior: Prior, deviate: number): number {
  const side = deviate < 0 ? prior.low : prior.high;
  const turns = Math.abs(deviate) / normalQuantile(0.95);
  switch (prior.distribution) {
    // As `quantile`, without the way through a share, which has no room left beyond 8 deviates.
    case 'normal':
      return prior.value + turns * (side - prior.value);
    case 'lognormal':
      return prior.value * (side / prior.value) ** turns;
    default:
      return quantile(prior, normalCdf(deviate));
  }
}
