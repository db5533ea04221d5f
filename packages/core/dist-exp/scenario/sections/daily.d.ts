import { type Dimension } from '../../base/units.js';
import { type Complaint } from '../file/complaint.js';
import type { Reader } from '../file/reader.js';
import { type Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import { type DailyNeed } from '../checks/daily.js';
import type { DailyValue } from '../scenario.js';
/** A daily value as written: complete, or a column of a CSV file still to be read. */
export type DailyGiven = DailyValue | {
    readonly kind: 'csv';
    readonly file: string;
    readonly column: string;
    readonly unit: string;
};
/**
 * A value for each day of the run: a quantity, `{monthly: [12 values]}`, `{daily: [...]}`, or
 * `{csv: file, column: name, unit: unit}`. With `unit` the values of a list may be plain numbers.
 */
export declare function daily(dimension: Dimension, description: string): Reads<DailyGiven>;
/**
 * One column of CSV text: a row of names, then one row a day. Values are numbers in `unit`, converted
 * to the internal unit. Never fills gaps: an empty field is `gap` where that is given, else, like one that
 * cannot be read, a complaint that names its line.
 */
export declare function readCsvColumn(text: string, column: string, unit: string, dimension: Dimension, gap?: number): {
    values: readonly number[];
} | {
    complaint: Complaint;
    about: 'csv' | 'column';
};
/** Completes a daily value: reads its CSV, and checks that it reaches to the end and stays in bounds. */
export declare function readDaily(reader: Reader, path: Path, given: DailyGiven, need: DailyNeed): DailyValue | undefined;
//# sourceMappingURL=daily.d.ts.map