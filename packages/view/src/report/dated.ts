import { dateNames, day, type Display } from '../text/index.js';

/** A day of a run with its date, short, for a cell of a table: `40 (9 Nov)`; the day alone where the run had none. */
export function dayAndDate(time: number | undefined, startDate: string, display: Display): string {
  const told = day(time, display);
  return time === undefined || !Number.isFinite(time)
    ? told
    : `${told} (${dateNames(startDate, display)(time)})`;
}
