import { tableColumns } from './tables.generated.js';
import type { TableRow } from './table-row.js';

function rowAt(index: number): TableRow {
  const { table, id, value, unit, low, high, distribution, conditions, source, page, mark } = tableColumns;
  return {
    table: table[index],
    id: id[index],
    value: value[index],
    unit: unit[index],
    low: low[index],
    high: high[index],
    distribution: distribution[index],
    conditions: conditions[index],
    source: source[index],
    page: page[index],
    mark: mark[index],
  };
}

/** Every number of the science by its id, in the order of the tables. */
export const tableRows: ReadonlyMap<string, TableRow> = /* @__PURE__ */ new Map(
  tableColumns.id.map((id, index) => [id, rowAt(index)]),
);
