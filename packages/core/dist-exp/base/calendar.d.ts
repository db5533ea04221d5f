/** A day in the calendar. */
export interface CalendarDay {
    readonly year: number;
    /** 1-12. */
    readonly month: number;
    /** 1-31. */
    readonly day: number;
}
/** Days from 1970-01-01 to a day in the calendar, before it below 0; undefined where there is no such day. */
export declare function dayNumber({ year, month, day }: CalendarDay): number | undefined;
/** The day in the calendar so many days after 1970-01-01; part of a day counts for nothing. Throws RangeError for NaN. */
export declare function calendarDay(number: number): CalendarDay;
/** A day in the calendar as `yyyy-mm-dd`. */
export declare function isoDate({ year, month, day }: CalendarDay): string;
/** Days since 1970-01-01 of a date `yyyy-mm-dd` or `yyyy-mm-dd hh:mm`; undefined where there is no such day. */
export declare function calendarDays(text: string): number | undefined;
/** Whether a text is a date `yyyy-mm-dd` of the calendar. */
export declare function isDate(text: string): boolean;
/** Days from one date to another, both as `calendarDays` reads them; NaN where one is none. */
export declare function daysBetween(from: string, to: string): number;
/** The date `yyyy-mm-dd` so many `days` after another. */
export declare function dateAfter(date: string, days: number): string;
/** The moment so many `days` after a date, to the minute: `2026-03-01`, or within a day `2026-03-01 06:00`. */
export declare function dateAt(date: string, days: number): string;
/** Month (0-11) of the day so many days `after` a date. */
export declare function monthOf(date: string, after: number): number;
/**
 * Day of the year (1 on 1 January) of a calendar date, ISO 8601 yyyy-mm-dd, or of so many whole days
 * `after` it. Throws InputError when there is no such date.
 */
export declare function dayOfYear(date: string, after?: number): number;
//# sourceMappingURL=calendar.d.ts.map