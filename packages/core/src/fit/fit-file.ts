import * as z from 'zod';
import { InputError } from '../errors.js';
import { formProblem } from '../form-problem.js';
import type { Fit } from './fit.js';
import type { FittedValue } from './fitted-system.js';
import type { Prior } from './prior.js';

const priorSchema = z.object({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  distribution: z.enum(['fixed', 'uniform', 'triangular', 'normal', 'lognormal']),
});

const numberSchema = z.object({
  name: z.string(),
  kind: z.enum(['number', 'start', 'path']),
  unit: z.string(),
  prior: priorSchema,
  value: z.number(),
  deviate: z.number(),
  deviation: z.number().positive(),
});

/** What a fit file must hold, version 1. Keys beyond these are for reading. */
const fitSchema = z
  .object({
    title: z.string(),
    provenance: z.object({ scenario: z.string(), log: z.string(), from: z.string(), until: z.string() }),
    numbers: z.array(numberSchema).min(1),
    covariance: z.array(z.array(z.number())),
  })
  .refine(
    ({ numbers, covariance }) =>
      covariance.length === numbers.length && covariance.every((row) => row.length === numbers.length),
    { error: 'a row and a column of the covariance for each number', path: ['covariance'] },
  );

/** What commands take from a fit file. */
export interface SavedFit {
  readonly title: string;
  readonly provenance: {
    readonly scenario: string;
    readonly log: string;
    readonly from: string;
    readonly until: string;
  };
  /**
   * What was fitted, with the prior it had: `deviate` tells where the value stands in that prior, in standard deviates,
   * `deviation` its standard error there.
   */
  readonly numbers: readonly (FittedValue & {
    readonly prior: Prior;
    readonly deviate: number;
    readonly deviation: number;
  })[];
  /** Of the deviates. */
  readonly covariance: readonly (readonly number[])[];
}

/** The text of a fit file: one JSON document, the same for the same fit. */
export function fitText(fit: Fit): string {
  return `${JSON.stringify({ schema: 'leat-fit', version: 1, ...fit }, null, 1)}\n`;
}

/** Reads a fit file. Throws InputError where it is none. */
export function readFit(text: string, file: string): SavedFit {
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch {
    throw new InputError([{ file, problem: 'not JSON', expected: 'a fit written with `leat fit --out`' }]);
  }
  const form = formProblem(document, 'leat-fit', 1);
  if (form !== undefined) {
    const expected = `${form.expected}: a fit written with \`leat fit --out\``;
    throw new InputError([{ file, problem: form.problem, expected }]);
  }
  const reading = fitSchema.safeParse(document);
  if (reading.success) return reading.data;
  throw new InputError(
    reading.error.issues.map(({ path, message }) => ({
      file,
      key: path.join('.'),
      problem: `not a fit of version 1: ${message}`,
      expected: 'a fit written with `leat fit --out`',
    })),
  );
}
