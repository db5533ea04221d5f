import { quantile } from './quantile.js';
import type { TableRow } from './table-row.js';

const mostTries = 1000;

/**
 * One draw of a row. A draw that is not finite, or not above 0 where `low` is, is drawn again.
 * Throws RangeError when `random` gives no legal draw in a thousand tries.
 */
export function draw(row: TableRow, random: () => number): number {
  for (let tries = 0; tries < mostTries; tries++) {
    const value = quantile(row, random());
    if (Number.isFinite(value) && (row.low <= 0 || value > 0)) return value;
  }
  throw new RangeError(`no legal draw of ${row.id} in ${mostTries} tries`);
}
