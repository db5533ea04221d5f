import type { DailyValue } from './scenario.js';
/** Days for which daily values of unlike kinds are put together. */
export interface Span {
    readonly startDate: string;
    readonly days: number;
}
/**
 * Daily values worked out from others, day by day: as plain as the least plain of them, so that two monthly values make
 * a monthly one.
 */
export declare function combined<const Given extends readonly DailyValue[]>(given: Given, work: (...values: {
    [K in keyof Given]: number;
}) => number, { startDate, days }: Span): DailyValue;
/** Value on a day of the run; a daily list goes on with its last value. */
export declare function valueOn(value: DailyValue, startDate: string, day: number): number;
/** The same with the month (0-11) of the day known. */
export declare function valueInMonth(value: DailyValue, month: number, day: number): number;
//# sourceMappingURL=value-on.d.ts.map