import { tableColumns } from './tables.generated.js';
import type { TableRow } from './table-row.js';

/** Ids of the tables in their order: `.growth` goes on from the words of the one before it. */
function idsOf(short: readonly string[]): readonly string[] {
  let words = '';
  return short.map((id) => {
    if (id.startsWith('.')) return words + id;
    words = id.slice(0, Math.max(0, id.lastIndexOf('.')));
    return id;
  });
}

/** The rows that the columns hold. */
function rowsOf(): ReadonlyMap<string, TableRow> {
  const { unit, numbers, ...columns } = tableColumns;
  const { table, distribution, source, page, mark } = columns;
  const rows = new Map<string, TableRow>();
  let before: Pick<TableRow, 'table' | 'distribution' | 'source' | 'page' | 'mark'> = {
    ...{ table: '', distribution: 'fixed', source: '', page: '', mark: 'U' },
  };
  idsOf(columns.id).forEach((id, index) => {
    const [value, low, high] = numbers.slice(3 * index, 3 * index + 3);
    if (value === null) throw new RangeError(`${id} has no value in the tables`);
    before = {
      table: table[index] || before.table,
      distribution: distribution[index] || before.distribution,
      source: source[index] || before.source,
      page: page[index] || before.page,
      mark: mark[index] || before.mark,
    };
    const words = { source: before.source, page: before.page, mark: before.mark };
    // Frozen: every model reads the same row.
    const row = {
      ...{ table: before.table, id, value, unit: unit[index], low: low ?? value, high: high ?? value },
      ...{ distribution: before.distribution, ...words },
    };
    rows.set(id, Object.freeze(row));
  });
  return rows;
}

/** Every number of the science by its id, in the order of the tables. */
export const tableRows: ReadonlyMap<string, TableRow> = /* @__PURE__ */ rowsOf();
