import type { CorrelationCells, SourceCells, TableColumns } from './table-row.js';
/** The numbers by column: like beside like takes a tenth less to send, ids that go on from the one before them a fifth. */
export declare const tableColumns: TableColumns;
/** One row a source: key, citation, year, doi, note. */
export declare const sourceCells: readonly SourceCells[];
/** One row a correlation: a, b, rank, conditions, source, page, mark. */
export declare const correlationCells: readonly CorrelationCells[];
//# sourceMappingURL=tables.generated.d.ts.map