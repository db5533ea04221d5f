import type { Fault } from '../../base/faults.js';
/** Two values of one quantity, `from` and `to`, in the unit of the first. */
export interface ValueRange {
    readonly from: number;
    readonly to: number;
    /** Empty for a bare number. */
    readonly unit: string;
}
/** Names of the two ends in faults, such as `--from` and `--to`. */
export interface EndNames {
    readonly from: string;
    readonly to: string;
}
/**
 * Reads one value such as `0.4 m3` as a number in a unit (empty: a bare number).
 * @param name what to name in a fault, such as an option
 */
export declare function valueInUnit(text: string, unit: string, name: string): number | Fault;
/**
 * Reads the two ends of a range, such as `50 L` and `2 m3`. Whether the quantity is the right one is for the reader
 * of the file to say.
 * @returns the range in the unit of the first, or all that is wrong
 */
export declare function valueRange(from: string, to: string, names: EndNames): ValueRange | readonly Fault[];
//# sourceMappingURL=value-range.d.ts.map