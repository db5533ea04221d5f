import type { Oddity } from './water-log.js';
/** A table of text as it stood in a file, nothing read into it. */
export interface LogTable {
    /** Name of the file, for messages. */
    readonly file: string;
    /** Cells of every row, the first row first: row 1 of the file is `rows[0]`. */
    readonly rows: readonly (readonly string[])[];
    /** What is odd about the file as a whole, such as sheets that are not read. */
    readonly oddities?: readonly Oddity[];
}
/**
 * Parses separated text (comma, semicolon or tab, found by the first line), as a spreadsheet saves it. Rows are
 * numbered as a spreadsheet numbers them.
 * @throws InputError where the text is no table: binary, empty, or beyond all size
 */
export declare function csvTable(text: string, file: string): LogTable;
/**
 * A table of cells that were read elsewhere, such as from a spreadsheet.
 * @throws InputError where it is empty or beyond all size
 */
export declare function logTable(rows: readonly (readonly string[])[], file: string, oddities?: readonly Oddity[]): LogTable;
//# sourceMappingURL=log-table.d.ts.map