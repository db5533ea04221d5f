import { rangeColumns } from './tables.generated.js';
import type { RangedRow } from './table-row.js';
import { tableValues } from './table-values.js';

/** The rows that the columns hold. */
function rangedRows(): ReadonlyMap<string, RangedRow> {
  const { table, distribution, unit, ends } = rangeColumns;
  const rows = new Map<string, RangedRow>();
  let before: Pick<RangedRow, 'table' | 'distribution'> = { table: '', distribution: 'fixed' };
  let index = 0;
  for (const [id, value] of tableValues) {
    before = {
      table: table[index] || before.table,
      distribution: distribution[index] || before.distribution,
    };
    const [low, high] = ends.slice(2 * index, 2 * index + 2);
    const numbers = { value, unit: unit[index], low: low ?? value, high: high ?? value };
    // Frozen: every model reads the same row.
    rows.set(id, Object.freeze({ table: before.table, id, ...numbers, distribution: before.distribution }));
    index += 1;
  }
  return rows;
}

/** Every number of the science by its id with its unit and range, in the order of the tables. */
export const tableRows: ReadonlyMap<string, RangedRow> = /* @__PURE__ */ rangedRows();
