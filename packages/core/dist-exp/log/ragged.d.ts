import type { LogTable } from './log-table.js';
/** A row below the header that has not as many cells as the header. */
export interface RaggedRow {
    /** Of the file, 1-based. */
    readonly row: number;
    readonly cells: number;
    /** Whether something stands beyond the last name; else cells are missing at its end. */
    readonly long: boolean;
}
/**
 * The rows below the header that have not as many cells as it has, blank rows left out.
 * @param header row of the header, 1-based
 */
export declare function raggedRows(table: LogTable, header: number): readonly RaggedRow[];
/**
 * Refuses a log in which most rows are ragged: a comma that was meant as a decimal sign parts cells, and what stands under
 * a name is then of another.
 * @param ragged the rows that put the reading of the others in doubt
 * @throws InputError
 */
export declare function refuseRagged(table: LogTable, header: number, ragged: readonly RaggedRow[]): void;
//# sourceMappingURL=ragged.d.ts.map