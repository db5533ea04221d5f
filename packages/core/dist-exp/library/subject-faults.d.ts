import type { Fault } from '../base/faults.js';
import type { TableRow } from './table-row.js';
/** A fault of a species, crop ... as a whole, and the row that stands for it. */
export interface SubjectFault extends Fault {
    readonly id: string;
}
/**
 * What is wrong with the subjects that the user touched: numbers that a new one lacks, and numbers that do not go
 * together (temperatures out of order ...).
 * @param rows the rows in use
 * @param faulty ids of rows that were given but are faulty: they are not said to be lacking
 */
export declare function subjectFaults(rows: ReadonlyMap<string, TableRow>, faulty?: ReadonlySet<string> | ReadonlyMap<string, unknown>): Generator<SubjectFault>;
//# sourceMappingURL=subject-faults.d.ts.map