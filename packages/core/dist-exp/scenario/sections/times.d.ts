import * as z from 'zod';
import type { Reader } from '../file/reader.js';
import type { Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import { type RunFrame } from './run.js';
/** A moment as written: days after the start, or days since 1970-01-01 of a calendar date. */
export type When = {
    readonly kind: 'after';
    readonly days: number;
} | {
    readonly kind: 'date';
    readonly days: number;
};
/** A moment of the run: `"30 d"` after the start, or a date `2026-03-01`, with a time of day if need be. */
export declare function moment(description: string): Reads<When, string>;
/** Keys that say when a plan is carried out: `at` first, then `every` so often, `until` (not on that moment). */
export declare const planTimes: {
    at: z.ZodOptional<Reads<When, string>>;
    every: z.ZodOptional<Reads<number, string>>;
    until: z.ZodOptional<Reads<When, string>>;
};
/** When something is done, in days since the start; `end` where it is undone again. */
export interface Occasion {
    readonly at: number;
    readonly end?: number;
}
/** The keys that say when, as read. */
export interface TimesGiven {
    readonly at?: When | undefined;
    readonly from?: When | undefined;
    readonly until?: When | undefined;
    readonly for?: number | undefined;
    readonly every?: number | undefined;
}
/** Days since the start of a written moment. */
export declare function dayOf(when: When, frame: RunFrame): number;
/**
 * Writes out when something happens. `at` is one moment; `every` repeats it up to, and not at, `until` or
 * the end of the run; `for`, or `from` with `until`, makes an interval, half open: at its end it is undone.
 *
 * @param usual the first moment where `at` is not written (plans begin after one `every`)
 */
export declare function expandTimes(reader: Reader, path: Path, given: TimesGiven, frame: RunFrame, usual?: number): Occasion[];
//# sourceMappingURL=times.d.ts.map