import * as z from 'zod';
import { measurables } from '../measurables.js';
import { deedSchema } from './action-schema.js';
import { kindComplaint } from './complaint.js';
import { choice, count, positive, section, word, type Reads } from './values.js';

/** A level of whatever is read: a quantity with its unit, or a bare number for pH. */
function level(description: string): Reads<string | number, string | number> {
  return z
    .union([z.string(), z.number()], { error: ({ input }) => kindComplaint(input, description) })
    .meta({ description, examples: ['2 mg N/L', '4 dKH', 6.8] });
}

const whenSchema = section(
  {
    read: choice('what is measured; ammonia is total ammonia nitrogen (TAN)', measurables),
    in: word('the vessel whose water is measured'),
    above: level('acts when the reading is above this').optional(),
    below: level('acts when the reading is below this').optional(),
    until: level('goes on until the reading is on the other side of this').optional(),
  },
  'a reading and the level at which something is done',
);

const kitSchema = section(
  {
    resolution: level('readings are rounded to whole multiples of this').optional(),
    error: level(
      'standard deviation of a reading: a quantity, or a share of the reading such as "10 %"',
    ).optional(),
    every: positive('time', 'time between two readings, whole days from day 0; default 1 d').optional(),
  },
  'how it is measured; without it every reading is true',
);

/** One rule of `rules`: a reading, and what is done about it. */
export const ruleSchema = section(
  {
    when: whenSchema,
    kit: kitSchema.optional(),
    do: deedSchema,
    undo: deedSchema.optional(),
    wait: positive('time', 'least time between one `do` and the next').optional(),
    most: count('most times that `do` is done in a run', 1, 100_000).optional(),
  },
  'something done when a reading passes a level',
);
