import * as z from 'zod';
import { parseQuantity } from '../../units.js';
import type { Ration } from '../scenario.js';
import { complain, kindComplaint } from './complaint.js';
import {
  choice,
  count,
  positive,
  quantity,
  quantityComplaint,
  type Reads,
  section,
  share,
  word,
} from './values.js';

const rationText = 'a ration such as "80 g/d" or "1.5 %/d", or a table of mass and ration';

const tableRow = section(
  {
    mass: quantity('mass', 'mean mass of a fish'),
    ration: quantity('share-rate', 'share of body mass a day'),
  },
  'a row of a ration table',
);

/** Feed given per day: a mass, a share of body mass, or a table of shares by mean mass. */
export const rationSchema: Reads<Ration> = z
  .union([z.string().meta({ examples: ['80 g/d', '1.5 %/d'] }), z.array(tableRow)], {
    error: ({ input }) => quantityComplaint(input, rationText),
  })
  .transform((written, context): Ration => {
    const refuse = (problem: string, path: (string | number)[] = []): never => {
      context.addIssue({ code: 'custom', path, message: complain({ problem, expected: rationText }) });
      return z.NEVER;
    };
    if (typeof written === 'string') {
      const mass = parseQuantity(written, 'mass-flow');
      if ('value' in mass) return { kind: 'mass', gramsPerDay: mass.value };
      const part = parseQuantity(written, 'share-rate');
      if ('value' in part) return { kind: 'share', perDay: part.value };
      return refuse(mass.problem.startsWith('wrong dimension') ? part.problem : mass.problem);
    }
    if (written.length === 0) return refuse('an empty table');
    const falling = written.findIndex(
      (row, index) => index > 0 && row.mass <= (written[index - 1]?.mass ?? 0),
    );
    if (falling > 0) return refuse('masses of a table must rise', [falling, 'mass']);
    return { kind: 'table', rows: written.map(({ mass, ration }) => ({ mass, perDay: ration })) };
  });

const clock = /^(\d{1,2}):(\d{2})\s*-\s*(\d{1,2}):(\d{2})$/;

/** Hours of the day such as `"08:00-18:00"`, as shares of a day. */
const hoursSchema = z
  .string({ error: ({ input }) => kindComplaint(input, 'hours such as "08:00-18:00"') })
  .meta({ description: 'hours in which feed is given; default: all day', examples: ['08:00-18:00'] })
  .transform((text, context): { from: number; to: number } => {
    const parts = clock.exec(text)?.slice(1).map(Number);
    const [fromHour = 25, fromMinute = 0, toHour = 25, toMinute = 0] = parts ?? [];
    const from = (fromHour + fromMinute / 60) / 24;
    const to = (toHour + toMinute / 60) / 24;
    if (fromMinute < 60 && toMinute < 60 && from < to && to <= 1) return { from, to };
    const expected = 'hours such as "08:00-18:00", the second later';
    context.addIssue({ code: 'custom', message: complain({ problem: 'not hours of one day', expected }) });
    return z.NEVER;
  });

/** Most fish in a cohort. */
const manyFish = 10_000_000;

/** Number of fish where some are meant. */
export const fishCount = count('number of fish', 1, manyFish);

/** One cohort of `fish`. */
export const cohortSchema = section(
  {
    in: word('the vessel they live in'),
    species: word('a species of the library'),
    number: count('number of fish at the start; 0 where they come later', 0, manyFish),
    mass: positive('mass', 'mean mass of a fish at the start'),
    ration: rationSchema.meta({ description: rationText }),
    feed: word('a feed of the library').optional(),
    protein: share('protein in the feed as fed; default: that of the feed').optional(),
    hours: hoursSchema.optional(),
  },
  'a group of like fish in one vessel',
);

/** One planting of `plantings`. */
export const plantingSchema = section(
  {
    in: word('the vessel it grows in'),
    crop: word('a crop of the library'),
    area: positive('area', 'whole area of the crop'),
    cover: share('share of the area that the crop shades at full growth; default 1').optional(),
    batches: count('batches of staggered age; default 1', 1, 60).optional(),
    harvest: positive('time', 'age at harvest since planting; default: that of the crop').optional(),
    after: choice('what follows the harvest; default replant', ['replant', 'empty']).optional(),
    start: choice('at the start; default: staggered for more than one batch, else new', [
      'staggered',
      'new',
      'empty',
    ]).optional(),
    age: quantity('time', 'age of the oldest batch at the start').optional(),
  },
  'an area of one crop in one vessel',
);
