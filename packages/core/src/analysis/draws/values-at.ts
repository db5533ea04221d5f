import { quantile } from '../../library/quantile.js';
import type { TableRow } from '../../library/table-row.js';
import { keyOf, uniformAt } from './hash.js';

/** Most tries at a legal draw. */
const mostTries = 1000;

/** Whether a value makes sense for a row: finite, and above 0 where its low end is. */
const legal = (row: TableRow, value: number): boolean =>
  Number.isFinite(value) && (row.low <= 0 || value > 0);

function valueOf(row: TableRow, u: number): number {
  let value = quantile(row, u);
  // The far tail of a normal distribution may fall below 0: another draw then, fixed by the first.
  const key = keyOf(Math.floor(u * 2 ** 53), row.id);
  for (let tries = 0; !legal(row, value) && tries < mostTries; tries++)
    value = quantile(row, uniformAt(key, tries));
  if (!legal(row, value)) throw new RangeError(`no legal draw of ${row.id} in ${mostTries} tries`);
  return value;
}

/** The values of rows at uniform numbers (0..1), one for each, by id. Throws RangeError where a row has no legal value. */
export function valuesAt(rows: readonly TableRow[], u: ArrayLike<number>): ReadonlyMap<string, number> {
  return new Map(rows.map((row, i) => [row.id, valueOf(row, u[i])]));
}
