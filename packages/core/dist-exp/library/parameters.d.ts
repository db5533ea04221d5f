import type { Override } from './override.js';
import { type SubjectGroup } from './names.js';
import type { TableRow } from './table-row.js';
/** The numbers of the science for one run, in internal units. Remembers which were read. */
export interface Parameters {
    /** The number with this id. Throws RangeError with the nearest id when there is none. */
    value(id: string): number;
    /** The whole row, with the value in use; does not count as reading. Throws as `value` does. */
    row(id: string): TableRow;
    /** Whether there is a number with this id, ours or the user's. */
    has(id: string): boolean;
    /** Every row in use, ours in the order of the tables, then what the user added. */
    rows(): Iterable<TableRow>;
    /** The subjects of a group (`names`), those that the user added with them. */
    subjects(group: SubjectGroup): readonly string[];
    /** Ids read so far, sorted. */
    used(): string[];
    /** What is unusual about the numbers the user gave: one line each. */
    readonly warnings: readonly string[];
}
/**
 * The numbers of the tables, with those the user gives in their place or beside them: rows of tables of the
 * user first, then single numbers, in the order given.
 * Throws InputError with a fault for each unknown or repeated id, each value that makes no sense, and each
 * species, crop, medium ... that lacks a number the model reads.
 */
export declare function createParameters(overrides?: readonly Override[]): Parameters;
/**
 * Numbers drawn at random: each row that is not fixed takes one draw from its distribution, in the
 * order of the tables. A number the user gives without a range stays as given.
 * `random` gives uniform numbers in [0, 1). Throws as `createParameters` does.
 */
export declare function drawParameters(random: () => number, overrides?: readonly Override[]): Parameters;
/**
 * The numbers of others with some `values` (in the unit of their row) put in their place, by id; rows keep range, source and mark.
 * Nothing is checked again. Throws RangeError for an unknown id.
 */
export declare function parametersAt(values: ReadonlyMap<string, number>, others: Parameters): Parameters;
/** The numbers of others with some rows in their place or beside them, taken as they are: nothing is checked. */
export declare function withRows(rows: ReadonlyMap<string, TableRow>, others: Parameters): Parameters;
/** The numbers in these rows, taken as they are: nothing is checked. */
export declare function parametersOf(rows: ReadonlyMap<string, TableRow>, warnings?: readonly string[]): Parameters;
//# sourceMappingURL=parameters.d.ts.map