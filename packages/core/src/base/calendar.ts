import { InputError } from './faults.js';

/** Milliseconds in a day. */
const dayLength = 86_400_000;

const calendar = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{2}):(\d{2}))?$/;

/** Days since 1970-01-01 of a date `yyyy-mm-dd` or `yyyy-mm-dd hh:mm`; undefined where there is no such day. */
export function calendarDays(text: string): number | undefined {
  const match = calendar.exec(text);
  if (match === null) return undefined;
  const [year, month, day, hour, minute] = match.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && hour < 24 && minute < 60;
  return exists ? date.getTime() / dayLength + (hour + minute / 60) / 24 : undefined;
}

/** Days from one date to another, both as `calendarDays` reads them; NaN where one is none. */
export function daysBetween(from: string, to: string): number {
  return (calendarDays(to) ?? Number.NaN) - (calendarDays(from) ?? Number.NaN);
}

/** The date `yyyy-mm-dd` a number of days after another. */
export function dateAfter(date: string, days: number): string {
  const day = (calendarDays(date) ?? Number.NaN) + days;
  return new Date(day * dayLength).toISOString().slice(0, 10);
}

const MILLISECONDS = 86_400_000;

/**
 * Day of the year (1 on 1 January) of a calendar date, ISO 8601 yyyy-mm-dd, or of so many whole days
 * `after` it. Throws InputError when there is no such date.
 */
export function dayOfYear(date: string, after = 0): number {
  const start = Date.parse(`${date}T00:00:00Z`);
  const real = Number.isFinite(start) && new Date(start).toISOString().slice(0, 10) === date;
  if (!real) throw new InputError([{ got: date, problem: 'no such date', expected: 'yyyy-mm-dd' }]);
  const then = start + Math.floor(after) * MILLISECONDS;
  const newYear = Date.UTC(new Date(then).getUTCFullYear(), 0, 1);
  return (then - newYear) / MILLISECONDS + 1;
}
