import { asin } from '../base/trigonometry.js';
import * as z from 'zod';
import type { RankCorrelation } from '../library/correlations.js';
import { InputError } from '../base/faults.js';
import { formProblem } from '../base/form-problem.js';
import { sealed, sealProblem } from '../base/seal.js';
import { deviate95 } from '../base/normal.js';
import type { WaterLog } from '../log/water-log.js';
import { scenarioHash } from '../result/record.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Fit } from './fit.js';
import type { FirstRation } from './with-log.js';
import { type FittedValue, settingsOf } from './fitted-system.js';
import { type Prior, valueAt } from './free-parameter.js';
import { logHash } from './readings.js';
import type { PastFit } from './search-fit.js';

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
    verdict: z.enum(['trusted', 'partly', 'failed']).optional(),
    trust: z
      .array(z.object({ reads: z.string(), vessel: z.string(), trusted: z.boolean().optional() }))
      .optional(),
    faults: z.array(z.object({ kind: z.string() })).optional(),
    grownOn: z.array(z.object({ cohort: z.string(), gramsPerDay: z.number().positive() })).optional(),
    past: z.array(z.object({ until: z.string(), deviates: z.array(z.number()) })).optional(),
  })
  .refine(({ numbers, past = [] }) => past.every(({ deviates }) => deviates.length === numbers.length), {
    error: 'a deviate for each number',
    path: ['past'],
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
  /** What the fit is good for by its own verdict; fits of older versions failed where they have a fault. */
  readonly verdict?: 'trusted' | 'partly' | 'failed' | undefined;
  readonly trust?:
    | readonly {
        readonly reads: string;
        readonly vessel: string;
        readonly trusted?: boolean | undefined;
      }[]
    | undefined;
  /** Why, by name; fits of older versions may say nothing of it. */
  readonly faults?: readonly { readonly kind: string }[] | undefined;
  /** What its cycled films have grown on in place of the file's rations; fits of older versions do not say. */
  readonly grownOn?: readonly FirstRation[] | undefined;
  /** Fits to the log as it was known at earlier dates; fits of older versions have none. */
  readonly past?: readonly PastFit[] | undefined;
}

/** The text of a fit file: one JSON document, the same for the same fit, with a hash over all of it. */
export function fitText(fit: Fit): string {
  return `${JSON.stringify(sealed({ schema: 'leat-fit', version: 1, ...fit }), null, 1)}\n`;
}

/** Reads a fit file. Throws InputError where it is none, or is not as it was written. */
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
  if (reading.success) {
    const seal = sealProblem(document);
    if (seal === undefined) return reading.data;
    const expected = `${seal.expected} by \`leat fit --out\``;
    throw new InputError([{ file, problem: seal.problem, expected }]);
  }
  throw new InputError(
    reading.error.issues.map(({ path, message }) => ({
      file,
      key: path.join('.'),
      problem: `not a fit of version 1: ${message}`,
      expected: 'a fit written with `leat fit --out`',
    })),
  );
}

/** What a fit is used with: the system as its file has it, the log as it now stands, and its last date that counts. */
interface FitUse {
  readonly scenario: Scenario;
  readonly log: WaterLog;
  readonly until: string;
}

const readingsAfter = ({ readings }: WaterLog, from: string, to: string): number =>
  readings.filter(({ date }) => date > from && date <= to).length;

/** What the fit's own verdict says against it. */
function* verdictDoubts({
  faults = [],
  trust = [],
  verdict = faults.length > 0 ? 'failed' : 'trusted',
}: Pick<SavedFit, 'faults' | 'trust' | 'verdict'>): Generator<string> {
  const off = trust
    .filter(({ trusted }) => trusted === false)
    .map(({ reads, vessel }) => `${reads} in ${vessel}`);
  if (verdict === 'failed') {
    const why = off.length > 0 ? off : [...new Set(faults.map(({ kind }) => kind))];
    yield `warning: this fit failed by its own verdict (${why.join(', ')}): what it says is not to be trusted`;
  }
  if (verdict === 'partly')
    yield `warning: by its own verdict this fit is not to be trusted with ${off.join(', ')}`;
}

/**
 * Why a saved fit may not be of what it is used with: made of another system file, of a log that has since changed or
 * gone on, or of readings after the last date that counts. One line each; none where all is as it was.
 */
export function fitDoubts(
  { provenance, ...told }: SavedFit,
  { scenario, log, until }: FitUse,
): readonly string[] {
  const doubts = [...verdictDoubts(told)];
  if (provenance.scenario !== scenarioHash(scenario))
    doubts.push(
      'warning: the system file is not as it was when the fit was made (or the fit was made with --set or --tables): fit again',
    );
  // A fit to the first part of a log once carried the hash of all of it.
  const known = [logHash(log, provenance.until), logHash(log, log.to)];
  // Nor did it tell of what was done, before it told what its films grew on.
  if (told.grownOn === undefined)
    known.push(logHash(log, provenance.until, false), logHash(log, log.to, false));
  if (!known.includes(provenance.log))
    doubts.push(
      `warning: the log up to ${provenance.until} is not as it was when the fit was made: fit again`,
    );
  const more = readingsAfter(log, provenance.until, until);
  if (more > 0)
    doubts.push(
      `warning: the fit was made of the log up to ${provenance.until}: it does not know the ${more} readings after that`,
    );
  const ahead = readingsAfter(log, until, provenance.until);
  if (ahead > 0)
    doubts.push(
      `warning: the fit knows ${ahead} readings after ${until}: this forecast is no test of it (see leat backtest)`,
    );
  return doubts;
}

const header = ['id', 'value', 'unit', 'low', 'high', 'distribution', 'conditions', 'source', 'page', 'mark'];

/** Deviates from the middle to the ends of a range that has the spread of a standard normal. */
const ends = {
  /** 5 % and 95 %, as the tables have it. */
  soft: deviate95,
  /** The ends of a triangle with standard deviation 1. */
  hard: Math.sqrt(6),
};

/** What the log left of the range of a number: value, low, high and how they are spread. */
function rangeLeft({ value, prior, deviate, deviation }: SavedFit['numbers'][number]): Prior {
  const soft = prior.distribution === 'normal' || prior.distribution === 'lognormal';
  const reach = deviation * (soft ? ends.soft : ends.hard);
  return {
    value,
    low: Math.min(value, valueAt(prior, deviate - reach)),
    high: Math.max(value, valueAt(prior, deviate + reach)),
    distribution: soft ? prior.distribution : 'triangular',
  };
}

/**
 * The numbers of a fit as a table of the user's own (tab-separated), with what the log left of their ranges: normal and
 * lognormal numbers span 90 %, others become triangles of the same spread, within the bounds they had. Start values and
 * paths of the file are not in it.
 */
export function fittedTable({ numbers, provenance }: SavedFit): string {
  const source = `fitted to the log of ${provenance.from} to ${provenance.until}`;
  const rows = numbers
    .filter(({ kind }) => kind === 'number')
    .map((number) => {
      const { value, low, high, distribution } = rangeLeft(number);
      return [number.name, value, number.unit, low, high, distribution, 'this system', source, '-', 'U'];
    });
  return [header, ...rows].map((cells) => `${cells.join('\t')}\n`).join('');
}

/**
 * A fit as settings: paths of the file, and those of its numbers (with their ranges) that the file gives anew under
 * `parameters`, where a table would not reach them.
 * @param given ids that the file gives anew
 */
export function fittedSettings({ numbers }: SavedFit, given: ReadonlySet<string>): readonly Setting[] {
  return numbers.flatMap((number) => {
    if (number.kind !== 'number') return settingsOf([number]);
    if (!given.has(number.name)) return [];
    const { value, low, high } = rangeLeft(number);
    return [{ path: `parameters.${number.name}`, value: `{ value: ${value}, low: ${low}, high: ${high} }` }];
  });
}

/**
 * How the numbers of a fit vary together, as rank correlations: 6/pi asin(r/2) of a correlation r between normals
 * (Pearson 1907) [M]. Of the numbers in `fittedTable` alone, and where both are drawn.
 */
export function fittedCorrelations({ numbers, covariance }: SavedFit): readonly RankCorrelation[] {
  return numbers.flatMap((a, i) =>
    numbers.slice(0, i).flatMap((b, j): RankCorrelation[] => {
      if (a.kind !== 'number' || b.kind !== 'number') return [];
      const r = covariance[i][j] / Math.sqrt(covariance[i][i] * covariance[j][j]);
      return [{ a: b.name, b: a.name, rank: (6 / Math.PI) * asin(r / 2), whereDrawn: true }];
    }),
  );
}
