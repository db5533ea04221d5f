import type { Fault } from '../base/faults.js';
import type { Override } from './override.js';
import { type TableRow } from './table-row.js';
/** The rows of a table of the user, where each stands, and what is wrong with them. */
export interface TableReading {
    readonly rows: readonly Override[];
    /** Line of every id that the table names, those of faulty rows too. */
    readonly lines: ReadonlyMap<string, number>;
    readonly faults: readonly Fault[];
}
/**
 * Reads a table of the user: tab-separated, with the columns of our own tables. A row stands in place of ours, or
 * adds a property to a new species, crop, medium, feed, water or dosing product. Numbers are converted to
 * the unit of the tables. Never throws: every fault names line and column.
 *
 * @param text of the file
 * @param file its name, for messages
 * @param rows the rows that hold so far (ours, and those of tables read before)
 */
export declare function readTable(text: string, file: string, rows: ReadonlyMap<string, TableRow>): TableReading;
//# sourceMappingURL=read-table.d.ts.map