import { InputError } from '../errors.js';

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
