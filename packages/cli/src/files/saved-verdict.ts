import type { CauseOfDeath, RunEvent, RunVerdict, Trouble } from '@leat/core';
import { z } from 'zod';
import { savedName } from './document-schema.js';

const day = z.number().exactOptional();

const troubleSchema = z.object({
  ...{ quantity: z.string(), direction: z.enum(['above', 'below']), value: z.number() },
  ...{ unit: z.string(), whom: z.string(), places: z.array(z.string()) },
  ...{ first: z.number(), total: z.number(), worst: z.number(), worstAt: z.number() },
}) satisfies z.ZodType<Trouble>;

const eventSchema = z.object({
  ...{ time: z.number(), kind: z.string(), place: z.string(), text: z.string() },
  short: z.literal(true).exactOptional(),
}) satisfies z.ZodType<RunEvent>;

const fishSchema = z.object({
  state: z.enum(['dead', 'lethal', 'at-risk', 'uncomfortable', 'safe']),
  from: day,
  troubles: z.array(troubleSchema),
  deaths: z.array(
    z.object({
      ...{ cohort: z.string(), vessel: z.string(), share: z.number(), cause: savedName<CauseOfDeath>() },
      ...{ halfBy: day, wipedOut: day },
    }),
  ),
  lost: z
    .array(z.object({ cohort: z.string(), number: z.number(), share: z.number(), from: z.number() }))
    .exactOptional(),
  uneaten: z.array(z.object({ cohort: z.string(), share: z.number(), until: day })).exactOptional(),
  thin: z
    .array(z.object({ cohort: z.string(), share: z.number(), from: z.number(), until: z.number() }))
    .exactOptional(),
});

const waterSchema = z.object({
  state: z.enum(['dry', 'pump', 'short', 'enough']),
  ...{ lowDays: z.number(), lowFirst: day, lowest: day, perDay: z.number(), over: day, rainTankEmpty: day },
  ...{ capDays: z.number(), capFirst: day, dry: z.array(z.string()), dryFirst: day },
  pumps: z.array(z.object({ pump: z.string(), times: z.number(), first: z.number(), total: z.number() })),
  first: eventSchema.exactOptional(),
});

const filterSchema = z.object({
  state: z.enum(['keeps-up', 'falls-behind', 'caught-up']),
  by: z.enum(['ammonia', 'nitrite']),
  held: z.enum(['oxygen', 'carbon', 'acid', 'cold', 'young', 'covered', 'stunned', 'load']).exactOptional(),
  ...{ from: day, until: day, ammonia: z.number(), nitrite: z.number() },
});

const cropsSchema = z.object({
  harvested: z.array(z.object({ crop: z.string(), mass: z.number(), dry: z.boolean() })),
  shortOfNitrogen: z.number(),
  salt: troubleSchema.exactOptional(),
});

const beginningSchema = z.object({
  time: z.number(),
  what: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('limit'), trouble: troubleSchema }),
    z.object({ kind: z.literal('water'), event: eventSchema }),
    z.object({ kind: z.literal('filter'), filter: filterSchema }),
  ]),
  after: eventSchema.exactOptional(),
});

/** The verdict in a document of `leat run --json`. */
export const verdictSchema = z.object({
  holdsUntil: z
    .object({
      ...{ time: z.number(), why: z.enum(['domain', 'fish', 'broken-off']) },
      trouble: troubleSchema.exactOptional(),
    })
    .exactOptional(),
  fish: fishSchema.exactOptional(),
  water: waterSchema,
  filter: filterSchema.exactOptional(),
  crops: cropsSchema.exactOptional(),
  beginning: beginningSchema.exactOptional(),
}) satisfies z.ZodType<RunVerdict>;
