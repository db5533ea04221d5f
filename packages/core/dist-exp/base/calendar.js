import { InputError } from './faults.js';
/** Milliseconds in a day. */
const DAY = 86_400_000;
/** Days from 1970-01-01 to a day in the calendar, before it below 0; undefined where there is no such day. */
export function dayNumber({ year, month, day }) {
    const date = new Date(0);
    date.setUTCFullYear(year, month - 1, day);
    const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
    return exists ? date.getTime() / DAY : undefined;
}
/** The day in the calendar so many days after 1970-01-01; part of a day counts for nothing. Throws RangeError for NaN. */
export function calendarDay(number) {
    if (Number.isNaN(number))
        throw new RangeError('not a day of the calendar');
    const date = new Date(Math.floor(number) * DAY);
    return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}
/** A day in the calendar as `yyyy-mm-dd`. */
export function isoDate({ year, month, day }) {
    const padded = (value, figures) => String(value).padStart(figures, '0');
    return `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
}
const written = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{2}):(\d{2}))?$/;
/** Days since 1970-01-01 of a date `yyyy-mm-dd` or `yyyy-mm-dd hh:mm`; undefined where there is no such day. */
export function calendarDays(text) {
    const match = written.exec(text);
    if (match === null)
        return undefined;
    const [year, month, day, hour, minute] = match.slice(1).map((part) => Number(part ?? 0));
    const number = dayNumber({ year, month, day });
    return number === undefined || hour >= 24 || minute >= 60 ? undefined : number + (hour + minute / 60) / 24;
}
/** Whether a text is a date `yyyy-mm-dd` of the calendar. */
export function isDate(text) {
    return text.length === 10 && calendarDays(text) !== undefined;
}
/** Days from one date to another, both as `calendarDays` reads them; NaN where one is none. */
export function daysBetween(from, to) {
    return (calendarDays(to) ?? Number.NaN) - (calendarDays(from) ?? Number.NaN);
}
/** The date `yyyy-mm-dd` so many `days` after another. */
export function dateAfter(date, days) {
    return isoDate(calendarDay((calendarDays(date) ?? Number.NaN) + days));
}
/** Minutes in a day. */
const MINUTES = 1440;
/** The moment so many `days` after a date, to the minute: `2026-03-01`, or within a day `2026-03-01 06:00`. */
export function dateAt(date, days) {
    const minutes = Math.round(days * MINUTES);
    const today = dateAfter(date, Math.floor(minutes / MINUTES));
    const past = minutes - Math.floor(minutes / MINUTES) * MINUTES;
    if (past === 0)
        return today;
    const padded = (value) => String(value).padStart(2, '0');
    return `${today} ${padded(Math.floor(past / 60))}:${padded(past % 60)}`;
}
/** Month (0-11) of the day so many days `after` a date. */
export function monthOf(date, after) {
    return calendarDay((calendarDays(date) ?? Number.NaN) + after).month - 1;
}
/**
 * Day of the year (1 on 1 January) of a calendar date, ISO 8601 yyyy-mm-dd, or of so many whole days
 * `after` it. Throws InputError when there is no such date.
 */
export function dayOfYear(date, after = 0) {
    const start = isDate(date) ? calendarDays(date) : undefined;
    if (start === undefined)
        throw new InputError([{ got: date, problem: 'no such date', expected: 'yyyy-mm-dd' }]);
    const then = start + Math.floor(after);
    const newYear = dayNumber({ year: calendarDay(then).year, month: 1, day: 1 }) ?? Number.NaN;
    return then - newYear + 1;
}
//# sourceMappingURL=calendar.js.map