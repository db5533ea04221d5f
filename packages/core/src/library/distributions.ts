import { pow } from '../base/elementary.js';
import { deviate95, normalQuantile } from '../base/normal.js';
import type { RangedRow } from './table-row.js';

type Spread = Pick<RangedRow, 'value' | 'low' | 'high' | 'distribution'>;

/**
 * The value of a row below which a share u (0..1) of its draws lies.
 *
 * Normal and lognormal have their median at `value` and their 5 % and 95 % points at `low` and `high`,
 * each side with its own spread. Uniform and triangular (peak at `value`) end hard at `low` and `high`.
 */
export function quantile(row: Spread, u: number): number {
  switch (row.distribution) {
    case 'fixed':
      return row.value;
    case 'uniform':
      return row.low + u * (row.high - row.low);
    case 'triangular':
      return triangular(row, u);
    case 'normal': {
      const z = normalQuantile(u) / deviate95;
      return row.value + (z < 0 ? z * (row.value - row.low) : z * (row.high - row.value));
    }
    case 'lognormal': {
      const z = normalQuantile(u) / deviate95;
      return row.value * pow(z < 0 ? row.value / row.low : row.high / row.value, z);
    }
  }
}

function triangular({ value, low, high }: Spread, u: number): number {
  const width = high - low;
  if (width === 0) return value;
  const peak = (value - low) / width;
  return u < peak
    ? low + Math.sqrt(u * width * (value - low))
    : high - Math.sqrt((1 - u) * width * (high - value));
}

const mostTries = 1000;

/**
 * One draw of a row. A draw that is not finite, or not above 0 where `low` is, is drawn again.
 * Throws RangeError when `random` gives no legal draw in a thousand tries.
 */
export function draw(row: RangedRow, random: () => number): number {
  for (let tries = 0; tries < mostTries; tries++) {
    const value = quantile(row, random());
    if (Number.isFinite(value) && (row.low <= 0 || value > 0)) return value;
  }
  throw new RangeError(`no legal draw of ${row.id} in ${mostTries} tries`);
}
