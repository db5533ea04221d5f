import { conditionsOf } from './conditions.js';
import { originOf } from './origins.js';
import { rangedOf } from './ranged-row.js';
import type { Parameters } from './parameters.js';
import type { TableRow } from './table-row.js';

/**
 * The whole row of a number: unit, range, what it holds for and where it came from, with the value in use. Does not count as
 * reading. Throws RangeError with the nearest id where there is no such number.
 */
export function rowOf(parameters: Pick<Parameters, 'number'>, id: string): TableRow {
  const number = parameters.number(id);
  const { table, value, unit, low, high, distribution, given } = rangedOf(number);
  const { source, page, mark } = originOf(number);
  return Object.freeze({
    ...{ table, id, value, unit, low, high, distribution, conditions: conditionsOf(number) },
    ...{ source, page, mark, ...(given !== undefined && { given }) },
  });
}

/** Every row in use, ours in the order of the tables, then what the user added. */
export function* rowsOf(parameters: Pick<Parameters, 'number' | 'ids'>): Generator<TableRow> {
  for (const id of parameters.ids()) yield rowOf(parameters, id);
}
