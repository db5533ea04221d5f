import {
  type BibliographyEntry,
  type Budget,
  type Component,
  type Costs,
  conserved,
  type Manifest,
  type Outcome,
  type RunAccount,
  type RunEvent,
} from '@leat/core';
import { z } from 'zod';
import {
  checkLengths,
  savedLimit,
  savedMark,
  savedName,
  savedNumber,
  wholeDocument,
} from './document-schema.js';
import { verdictSchema } from './saved-verdict.js';
import { documentIn, formFault, sealFault } from './saved-document.js';

/** What a saved document says of a run. */
export interface SavedRun {
  readonly account: RunAccount;
  /** Of the system and of each vessel, of every quantity. */
  readonly budgets: readonly Budget[];
  readonly events: readonly RunEvent[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
}

const budgetSchema = z.object({
  ...{ in: savedNumber, out: savedNumber, stored: savedNumber },
  ...{ residual: savedNumber, throughput: savedNumber },
  lines: z.array(
    z.object({
      ...{ name: z.string(), beyond: z.string(), by: z.string() },
      ...{ component: savedName<Component>(), amount: z.number() },
    }),
  ),
  stores: z.array(z.object({ component: savedName<Component>(), amount: z.number() })),
});

const budgetsSchema = z.record(z.enum(conserved), budgetSchema);

const costsSchema = z.object({
  ...{ currency: z.string(), spent: z.number(), earned: z.number() },
  rows: z.array(z.object({ name: z.string(), kind: z.enum(['spent', 'earned']), amount: z.number() })),
}) satisfies z.ZodType<Costs>;

const ascending = (times: readonly number[]): boolean =>
  times.every((time, i) => i === 0 || time > times[i - 1]);

/** The document of `leat run --json`, as far as a comparison or a report reads it. */
const runSchema = z
  .object({
    time: z.array(z.number()).nonempty().refine(ascending, 'expected times one after another'),
    series: z.record(z.string(), z.object({ unit: z.string(), values: z.array(savedNumber) })),
    budget: budgetsSchema,
    vessels: z.record(z.string(), budgetsSchema),
    ...{ title: z.string(), startDate: z.string(), verdict: verdictSchema },
    costs: costsSchema.exactOptional(),
    outcome: z.object({
      ...{ kind: savedName<Outcome['kind']>(), time: z.number() },
      ...{ worst: z.string().exactOptional(), advice: z.string().exactOptional() },
    }),
    keys: z.array(z.string()),
    limits: z.array(
      z.object({
        ...savedLimit,
        ...{ judged: z.boolean(), passed: z.boolean(), resolved: z.boolean(), total: z.number() },
        first: z.number().exactOptional(),
        ...{ worst: z.number().exactOptional(), worstAt: z.number().exactOptional() },
      }),
    ),
    events: z.array(
      z.object({
        ...{ time: z.number(), kind: z.string(), place: z.string(), text: z.string() },
        short: z.literal(true).exactOptional(),
      }),
    ),
    manifest: z.object({
      ...{ version: z.string(), scenario: z.string(), integrator: z.string(), tolerance: z.number() },
      ...{ seed: z.number().nullable(), given: z.array(z.string()) },
    }),
    sources: z.array(
      z.object({
        ...{ key: z.string(), citation: z.string(), mark: savedMark },
        ...{ given: z.string().exactOptional(), ids: z.array(z.string()) },
      }),
    ),
  })
  .superRefine(({ time, series }, context) => {
    const lists = Object.entries(series).map(([name, { values }]) => [name, [values]] as const);
    checkLengths(context, time, Object.fromEntries(lists));
  });

const placed = (budgets: z.output<typeof budgetsSchema>, place: string): Budget[] =>
  conserved.map((quantity) => ({ quantity, place, ...budgets[quantity] }));

/**
 * Reads the text of a file as a document of `leat run --json`; undefined when it is none (a scenario).
 * Throws FileError, naming the first place that is not as it should be, when it is one but not whole, or not as it was written.
 */
export function savedRun(file: string, source: string): SavedRun | undefined {
  if (!source.trimStart().startsWith('{')) return undefined;
  const document = documentIn(file, source);
  if (typeof document !== 'object' || document === null) return undefined;
  if (!('manifest' in document) || !('series' in document)) return undefined;
  const other = formFault(file, document, 'leat-run');
  if (other !== undefined) throw other;
  const held = wholeDocument(file, 'leat run --json', runSchema, document);
  const changed = sealFault(file, document);
  if (changed !== undefined) throw changed;
  const { title, startDate, verdict, costs, outcome, time, keys, limits, events, manifest, sources } = held;
  const series = Object.entries(held.series).map(([name, { unit, values }]) => ({ name, unit, values }));
  const system = placed(held.budget, 'system');
  const vessels = Object.entries(held.vessels).flatMap(([place, budgets]) => placed(budgets, place));
  const { nitrogen, water } = held.budget;
  return {
    account: {
      ...{ title, startDate, verdict, outcome, time, series, keys, limits },
      ...(costs && { costs }),
      nitrogen: { quantity: 'nitrogen', place: 'system', ...nitrogen },
      water: { quantity: 'water', place: 'system', ...water },
    },
    budgets: [...system, ...vessels],
    ...{ events, manifest, sources },
  };
}
