import * as z from 'zod';
import { calendarDays } from '../../base/calendar.js';
import { parseQuantity } from '../../base/units.js';
import { complain } from '../file/complaint.js';
import type { Reader } from '../file/reader.js';
import { describePath, type Path } from '../file/tree.js';
import { quantity, quantityComplaint, type Reads } from '../file/values.js';
import { checkMoment } from '../checks/actions.js';
import { most } from '../checks/ranges.js';
import { firstDay, type RunFrame } from './run.js';

/** A moment as written: days after the start, or days since 1970-01-01 of a calendar date. */
export type When =
  { readonly kind: 'after'; readonly days: number } | { readonly kind: 'date'; readonly days: number };

/** A moment of the run: `"30 d"` after the start, or a date `2026-03-01`, with a time of day if need be. */
export function moment(description: string): Reads<When, string> {
  const expected = 'a time after the start such as "30 d", or a date such as 2026-03-01';
  return z
    .string({
      error: ({ input }) => quantityComplaint(input, expected),
    })
    .meta({ description, examples: ['30 d', '2026-03-01', '2026-03-01 14:30'] })
    .transform((text, context) => {
      const dated = /^\d{4}-\d/.test(text);
      const answer = dated ? { value: calendarDays(text) } : parseQuantity(text, 'time');
      if ('value' in answer && answer.value !== undefined) {
        return { kind: dated ? 'date' : 'after', days: answer.value };
      }
      const problem = 'problem' in answer ? answer.problem : 'no such date';
      context.addIssue({ code: 'custom', message: complain({ ...answer, problem, expected }) });
      return z.NEVER;
    });
}

/** Keys that say when a plan is carried out: `at` first, then `every` so often, `until` (not on that moment). */
export const planTimes = {
  at: moment('first time; default: after one `every`').optional(),
  every: quantity(
    'time',
    'time between one and the next; range: more than 0; default: once, at `at`',
  ).optional(),
  until: moment('the plan ends before this moment; default: with the run').optional(),
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
export function dayOf(when: When, frame: RunFrame): number {
  return when.kind === 'after' ? when.days : when.days - firstDay(frame);
}

function repeat(
  reader: Reader,
  path: Path,
  first: number,
  every: number,
  before: number,
  length: number | undefined,
): Occasion[] {
  const times = Math.max(Math.ceil((before - first) / every - 1e-9), 0);
  if (times > most.actions) {
    reader.fault([...path, 'every'], 'too many repeats', { expected: `at most ${most.actions}` });
    return [];
  }
  return Array.from({ length: times }, (_, index) => {
    const at = first + index * every;
    return length === undefined ? { at } : { at, end: at + length };
  });
}

/** Whether a moment is of the run: one past its end is left out with a note, one before its start is a fault. */
function isInRun(reader: Reader, path: Path, key: string, day: number, { lastDay }: RunFrame): boolean {
  if (day < lastDay) return checkMoment(reader, [...path, key], day, lastDay);
  reader.notes.push(
    `${reader.where(path)}: ${describePath(path)} is left out: day ${Number(day.toPrecision(8))} is past the end of the run, day ${lastDay}`,
  );
  return false;
}

/**
 * Writes out when something happens. `at` is one moment; `every` repeats it up to, and not at, `until` or
 * the end of the run; `for`, or `from` with `until`, makes an interval, half open: at its end it is undone.
 *
 * @param usual the first moment where `at` is not written (plans begin after one `every`)
 */
export function expandTimes(
  reader: Reader,
  path: Path,
  given: TimesGiven,
  frame: RunFrame,
  usual?: number,
): Occasion[] {
  const refuse = (key: string, problem: string, expected: string): Occasion[] => {
    reader.fault([...path, key], problem, { expected });
    return [];
  };
  const { at, from, until, every, for: length } = given;
  const end = until === undefined ? undefined : dayOf(until, frame);
  if (every !== undefined && every <= 0)
    return refuse('every', 'must be more than zero', 'a time such as "7 d"');
  if (from !== undefined) {
    if (at !== undefined)
      return refuse('at', 'both at and from', 'at for a moment, from and until for an interval');
    if (every !== undefined)
      return refuse('every', 'an interval by from and until does not repeat', 'at, for and every');
    if (length !== undefined && end !== undefined) return refuse('for', 'both for and until', 'one of them');
    const start = dayOf(from, frame);
    const stop = end ?? (length === undefined ? undefined : start + length);
    if (stop === undefined) return refuse('until', 'missing', 'until or for, to end what starts at from');
    if (stop <= start) return refuse('until', 'not after from', 'a later moment');
    return isInRun(reader, path, 'from', start, frame) ? [{ at: start, end: stop }] : [];
  }
  const first = at === undefined ? usual : dayOf(at, frame);
  if (first === undefined) return refuse('at', 'missing', 'at, or from and until');
  if (at !== undefined && !isInRun(reader, path, 'at', first, frame)) return [];
  if (every === undefined) {
    if (end !== undefined)
      return refuse('until', 'until without every', 'every to repeat, or from and until for an interval');
    return [length === undefined ? { at: first } : { at: first, end: first + length }];
  }
  if (end !== undefined && end <= first) return refuse('until', 'not after the first time', 'a later moment');
  if (length !== undefined && length >= every)
    return refuse('for', 'not shorter than every', 'a time shorter than every');
  const limit = Math.min(end ?? Infinity, frame.days);
  return repeat(reader, path, first, every, limit, length);
}
