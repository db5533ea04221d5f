import * as z from 'zod';
import { calendarDays } from '../../calendar.js';
import { parseQuantity } from '../../units.js';
import { complain } from './complaint.js';
import { quantity, quantityComplaint, type Reads } from './values.js';

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
  at: moment('first time; without it, after one `every`').optional(),
  every: quantity('time', 'time between one and the next').optional(),
  until: moment('the plan ends before this moment; without it, with the run').optional(),
};
