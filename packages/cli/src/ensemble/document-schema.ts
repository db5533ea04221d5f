import { z } from 'zod';

/** A number; null stands for one that JSON lacks. */
const number = z
  .number()
  .nullable()
  .transform((value) => value ?? Number.NaN);
const numbers = z.array(number).transform((values) => Float64Array.from(values));
const edges = z.tuple([number, number]);
const bands = z.object({ median: number, band50: edges, band90: edges });
const note = z.object({ member: z.number(), reason: z.string() });

const limit = z.object({
  ...{ id: z.string(), quantity: z.string(), unit: z.string(), direction: z.enum(['above', 'below']) },
  ...{ value: z.number(), averaging: z.number(), whom: z.string(), place: z.string() },
  ...{ source: z.string(), page: z.string(), mark: z.enum(['R', 'S', 'C', 'M', 'W', 'P', 'U']) },
  ...{ judged: z.number(), passed: z.number(), probability: number, first: bands, total: bands },
});

const asked = z.object({
  ...bands.shape,
  ...{ text: z.string(), unit: z.string(), unanswered: note.nullable(), answered: z.number() },
  ...{ mean: number, deviation: number, lowest: number, highest: number },
});

/** The document of `leat ensemble --json`, as far as a report reads it. */
export const ensembleSchema = z.object({
  title: z.string(),
  manifest: z.object({
    scenario: z.string(),
    sampling: z.object({
      method: z.enum(['latin-hypercube', 'sobol']),
      members: z.number(),
      seed: z.number(),
    }),
  }),
  ran: z.number(),
  failed: z.array(note),
  drawn: z.array(z.object({ id: z.string() })),
  time: z.array(z.number()).nonempty(),
  series: z.record(
    z.string(),
    z.object({
      ...{ unit: z.string(), median: numbers, resolution: number },
      ...{ band50: z.tuple([numbers, numbers]), band90: z.tuple([numbers, numbers]) },
    }),
  ),
  limits: z.array(limit),
  measures: z.array(asked),
  conditions: z.array(asked.extend({ holds: z.number(), share: number })),
});
