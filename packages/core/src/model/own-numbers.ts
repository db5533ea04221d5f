import { draw } from '../library/distributions.js';
import { type Parameters, withRows } from '../library/parameters.js';
import type { TableRow } from '../library/table-row.js';
import type { OwnNumber } from './own.js';

/** A number of a user's own as a row beside ours. */
function ownRow(number: OwnNumber): TableRow {
  const { id, value, unit, low = value, high = value, source, mark } = number;
  return {
    ...{ table: 'own', id, value, unit, low, high, source, mark },
    distribution: number.distribution ?? (low < high ? 'uniform' : 'fixed'),
    conditions: number.conditions ?? '',
    page: number.page ?? '-',
    given: 'own numbers',
  };
}

/** The numbers of others, and a user's own beside them. */
export function withNumbers(others: Parameters, numbers: readonly OwnNumber[] = []): Parameters {
  return withRows(new Map(numbers.map((number) => [number.id, ownRow(number)])), others);
}

/** The same, with the user's own drawn at random. */
export function drawNumbers(
  others: Parameters,
  numbers: readonly OwnNumber[] = [],
  random: () => number,
): Parameters {
  const rows = numbers.map(ownRow).map((row) => ({
    ...row,
    value: row.distribution === 'fixed' ? row.value : draw(row, random),
  }));
  return withRows(new Map(rows.map((row) => [row.id, row])), others);
}
