import type { Fault } from '../base/faults.js';
import { type TableRow } from './table-row.js';
/** What a table of the user says of a number beside the number and its range. */
export interface GivenRow {
    readonly unit: string;
    readonly distribution: TableRow['distribution'];
    readonly conditions: string;
    readonly source: string;
    readonly page: string;
    readonly mark: TableRow['mark'];
}
/**
 * A number of the tables given anew by the user, or a new one: `value` and its range `low` to `high` in the unit of
 * the row.
 */
export interface Override {
    readonly id: string;
    readonly value: number;
    readonly low?: number;
    readonly high?: number;
    /** The rest of the row, where it stood in a table of the user; it may then be a number we have not. */
    readonly row?: GivenRow;
    readonly where?: string;
}
/** A row as the user wants it, its faults (then it must not be used), and what is unusual about it. */
export interface OverriddenRow {
    readonly row?: TableRow;
    readonly faults: readonly Fault[];
    readonly warnings: readonly string[];
}
/** Why an id is no number of the tables and may not be added to them; undefined when it may. */
export declare function idFault(id: string, rows: ReadonlyMap<string, TableRow>): Fault | undefined;
/** Puts a number given by the user in place of one of the rows, or beside them. */
export declare function overrideRow(override: Override, rows: ReadonlyMap<string, TableRow>): OverriddenRow;
//# sourceMappingURL=override.d.ts.map