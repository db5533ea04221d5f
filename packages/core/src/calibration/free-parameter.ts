import { pow } from '../base/elementary.js';
import { deviate95, normalCdf } from '../base/normal.js';
import { quantile } from '../library/distributions.js';
import type { RangedRow } from '../library/table-row.js';

/** What was held of a number before the log: low..high as in the tables. */
export type Prior = Pick<RangedRow, 'value' | 'low' | 'high' | 'distribution'>;

/**
 * The number at a standard deviate: -1.645 is its 5 % point, 0 its median, 1.645 its 95 % point. So every prior is a
 * standard normal in the deviate, and hard bounds lie at infinity.
 */
export function valueAt(prior: Prior, deviate: number): number {
  const side = deviate < 0 ? prior.low : prior.high;
  const turns = Math.abs(deviate) / deviate95;
  switch (prior.distribution) {
    // As `quantile`, without the way through a share, which has no room left beyond 8 deviates.
    case 'normal':
      return prior.value + turns * (side - prior.value);
    case 'lognormal':
      return prior.value * pow(side / prior.value, turns);
    default:
      return quantile(prior, normalCdf(deviate));
  }
}

/** What the water of a vessel may be fitted to hold at the start. */
export const startQuantities = [
  'ammonia',
  'nitrite',
  'nitrate',
  'alkalinity',
  'oxygen',
  'chloride',
  'solids',
  'settled',
] as const;

export type StartQuantity = (typeof startQuantities)[number];

/** A number that a fit may change. */
export interface Free {
  /** As written: the id of a number, `start.nitrate`, `start.nitrate@sump`, or a path of the file. */
  readonly name: string;
  readonly kind: 'number' | 'start' | 'path';
  /** Unit of its values: what the file is written in for a path, internal for the others; '' without. */
  readonly unit: string;
  readonly prior: Prior;
}
