import * as z from 'zod';
import { cap } from './cap-schema.js';
import { daily } from './daily-schema.js';
import { kindComplaint } from './complaint.js';
import { positive, quantity, section, share, word } from './values.js';

/** The section `rain-tank`. */
export const rainTankSchema = section(
  {
    capacity: positive('volume', 'what it holds'),
    volume: quantity('volume', 'what is in it at the start'),
    roof: quantity('area', 'roof that drains into it'),
    runoff: share('share of the rain on the roof that reaches it; default 1').optional(),
    rain: daily('depth-rate', 'rain'),
    water: word('what the rain holds: a name of `waters`'),
  },
  'a store of rain',
);

const source = section(
  {
    water: word('a name of `waters`'),
    cap: cap('most in one day or one week, as written; without it, no cap').optional(),
  },
  'a supply',
);

/** The section `top-up`. */
export const topUpSchema = section(
  {
    level: positive('volume', 'volume of the reservoir at which the float closes'),
    rate: positive('volume-flow', 'most that the valve lets in'),
    from: z.array(
      z.union([word('`rain-tank` or a name of `waters`'), source], {
        error: ({ input }) =>
          kindComplaint(input, '`rain-tank`, a name of `waters`, or a map of water and cap'),
      }),
      { error: ({ input }) => kindComplaint(input, 'a list of supplies, the first used first') },
    ),
  },
  'top-up of the reservoir by a float valve',
);
