import type { Parameters } from '../library/parameters.js';
import type { ColumnUse } from './log-map.js';
import type { LogReading, Oddity } from './water-log.js';
type Readings = Extract<ColumnUse, {
    kind: 'readings';
}>;
/** Where a cell stands. */
export interface CellPlace {
    readonly date: string;
    readonly hour: number;
    readonly row: number;
    readonly column: string;
}
/** How the numbers of a column are written. */
export interface ColumnWriting {
    /** Most decimals that any plain number of the column has: a 7 among 7.2 and 7.4 is a 7.0. */
    readonly decimals: number;
    /** Whether numbers of the log have a comma. */
    readonly commas: boolean;
}
/** A cell as a reading, or why not; with what is odd about it. */
export interface ReadingAnswer {
    readonly reading?: LogReading;
    readonly oddity?: Omit<Oddity, 'row' | 'column' | 'text'>;
}
/**
 * Reads one cell of a column of readings into an interval in internal units.
 */
export declare function readReading(text: string, use: Readings, { decimals, commas }: ColumnWriting, place: CellPlace, parameters: Parameters): ReadingAnswer;
export {};
//# sourceMappingURL=read-readings.d.ts.map