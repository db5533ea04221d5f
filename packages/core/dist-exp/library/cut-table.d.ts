import type { Fault } from '../base/faults.js';
/** The columns of a table, ours or the user's. */
declare const tableColumns: readonly ["id", "value", "unit", "low", "high", "distribution", "conditions", "source", "page", "mark"];
type TableColumn = (typeof tableColumns)[number];
/** One cell: which it is, what it says, and the 1-based column of its first letter. */
export interface Cell {
    readonly name: TableColumn;
    readonly text: string;
    readonly column: number;
}
/** One line of a table cut into cells. */
export interface Line {
    /** 1-based. */
    readonly number: number;
    readonly cells: Readonly<Record<TableColumn, Cell>>;
}
/**
 * Cuts the text of a table into lines and cells, each with its place in the line, which a CSV reader would lose; quotes
 * mean nothing. The first line names the columns, in any order; empty lines and
 * lines that begin with # are passed over. Never throws.
 */
export declare function cutTable(text: string, file: string): {
    readonly lines: readonly Line[];
    readonly faults: readonly Fault[];
};
export {};
//# sourceMappingURL=cut-table.d.ts.map