import { tableCells } from './tables.generated.js';
import type { TableCells, TableRow } from './table-row.js';

function toRow(cells: TableCells): TableRow {
  const [table, id, value, unit, low, high, distribution, conditions, source, page, mark] = cells;
  return { table, id, value, unit, low, high, distribution, conditions, source, page, mark };
}

/** Every number of the science by its id, in the order of the tables. */
export const tableRows: ReadonlyMap<string, TableRow> = new Map(
  tableCells.map((cells) => [cells[1], toRow(cells)]),
);
