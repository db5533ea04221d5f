import * as z from 'zod';
import { complain } from './complaint.js';
import { date } from './date-schema.js';
import { count, number, positive, section, word } from './values.js';

/** Longest run, d: a century. */
const longestRun = 36_525;

/** The version of the form of a file. One that changes what a file of version 1 means takes the next number. */
const formVersion = z
  .literal(1, { error: complain({ problem: 'a file of another version', expected: 'version 1' }) })
  .meta({ description: 'version of the form of this file; default 1' });

/** The keys at the top of a file that are single values. */
export const headSchema = section(
  {
    version: formVersion.optional(),
    title: word('what the system is called'),
    note: word('whatever should be known of it').optional(),
    days: number('length of the run in days', 0.001, longestRun),
    every: positive('time', 'time between two outputs; default 1 d').optional(),
    'start-date': date('calendar date of day 0; default 2001-01-01').optional(),
    reservoir: word('the vessel that takes all change of level'),
    seed: count('seed of the errors of test kits; default 1', 0, Number.MAX_SAFE_INTEGER).optional(),
  },
  'the run',
);
