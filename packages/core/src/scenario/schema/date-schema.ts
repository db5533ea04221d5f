import * as z from 'zod';
import { calendarDays } from '../../calendar.js';
import { complain, kindComplaint } from './complaint.js';
import type { Reads } from './values.js';

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
