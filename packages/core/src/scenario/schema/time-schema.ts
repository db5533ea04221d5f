import * as z from 'zod';
import { parseQuantity } from '../../units.js';
import { complain, kindComplaint } from './complaint.js';
import { quantity, quantityComplaint, type Reads } from './values.js';

/** Milliseconds in a day. */
const dayLength = 86_400_000;

/** A moment as written: days after the start, or days since 1970-01-01 of a calendar date. */
export type When =
  { readonly kind: 'after'; readonly days: number } | { readonly kind: 'date'; readonly days: number };

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

/** A calendar date `yyyy-mm-dd`. */
export function date(description: string): Reads<string, string> {
  const expected = 'a date such as 2026-03-01';
  return z
    .string({ error: ({ input }) => kindComplaint(input, expected) })
    .meta({ description, examples: ['2026-03-01'] })
    .refine((text) => text.length === 10 && calendarDays(text) !== undefined, {
      error: () => complain({ problem: 'no such date', expected }),
    });
}

/** Keys that say when a plan is carried out: `at` first, then `every` so often, `until` (not on that moment). */
export const planTimes = {
  at: moment('first time; without it, after one `every`').optional(),
  every: quantity('time', 'time between one and the next').optional(),
  until: moment('the plan ends before this moment; without it, with the run').optional(),
};
