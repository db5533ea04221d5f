import { type Dimension } from '../../base/units.js';
import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
/** What a daily value is read for: how many days it must reach, and what it may be. */
export interface DailyNeed {
    readonly dimension: Dimension;
    readonly days: number;
    readonly low?: number;
    readonly high?: number;
}
/** Where the values of a daily value stand. */
export interface DailyPlaces {
    /** The list, where it may not reach far enough. */
    readonly list: Path;
    /** One value, by index. */
    value(index: number): Path;
    /** Said beside a value that is out of range. */
    note?(index: number): string;
}
/** What is wrong with how many values a list of a kind has, if anything. */
export declare function listProblem(kind: 'monthly' | 'daily', count: number): {
    readonly problem: string;
    readonly expected: string;
} | undefined;
/** Whether daily values are within their range and reach to the end of the run; a fault where they do not. */
export declare function checkDaily(report: Report, kind: 'constant' | 'monthly' | 'daily', values: readonly number[], { dimension, days, low, high }: DailyNeed, places: DailyPlaces): boolean;
//# sourceMappingURL=daily.d.ts.map