import type { DateOrder } from './log-map.js';
/** A date in the calendar; the year may be missing, and the part of the day is 0 where no time is written. */
export interface WrittenDate {
    readonly year?: number;
    readonly month: number;
    readonly day: number;
    readonly hour: number;
}
/**
 * Reads a date as people write it: `2026-03-05`, `5/3/2026`, `5.3.26`, `5 Mar 2026`, `March 5`, `Thu 5 March`, a
 * spreadsheet's serial number, each with or without a time of day. undefined where it is none.
 */
export declare function readDate(text: string, order: DateOrder): WrittenDate | undefined;
/** The order of the dates of a column, with the evidence for it; or why it cannot be found. */
export type OrderAnswer = {
    readonly order: DateOrder;
    readonly evidence: string;
} | {
    readonly problem: string;
};
/**
 * Tells whether 3/4 is the third of April or the fourth of March: by figures above 12, else by the order in
 * which the rows run on day by day.
 */
export declare function dateOrder(texts: readonly string[]): OrderAnswer;
//# sourceMappingURL=dates.d.ts.map