import { InputError } from '../../base/faults.js';
import type { TableRow } from '../../library/table-row.js';
import type { PlacedLimit } from '../../result/limit-check.js';
import type { ExtendedScenario } from '../../model/open-model.js';
import { type MemberNote, openAccumulator, type Accumulator } from './accumulator.js';
import {
  type Basis,
  basisOf,
  memberOf,
  type MemberOutcome,
  type Outline,
  type Questions,
} from './members.js';
import { openRuns, type RunsOptions } from './open-runs.js';
import { type Bands, bandsOf, type Summary, summaryOf } from './quantiles.js';
import { openSampling, type Sampling } from './sampling.js';

/** The `median` and bands of one series, in `unit`, one entry for each output time. */
export interface SeriesBands {
  readonly name: string;
  readonly unit: string;
  readonly median: Float64Array;
  /** 25 % and 75 %. */
  readonly band50: readonly [Float64Array, Float64Array];
  /** 5 % and 95 %. */
  readonly band90: readonly [Float64Array, Float64Array];
  /** How far a quantile may be off at most, in `unit`; 0 for up to 128 members. */
  readonly resolution: number;
}

/** How the members stood to one limit. */
export interface LimitOdds extends PlacedLimit {
  /** Members that could be judged. */
  readonly judged: number;
  /** Those of them that passed the limit. */
  readonly passed: number;
  /** passed / judged; NaN where none was judged. */
  readonly probability: number;
  /** When first passed, d, over the members that passed it. */
  readonly first: Bands;
  /** How long in all, d, over the members that passed it. */
  readonly total: Bands;
}

/** One measure over all members. */
export interface MeasureSummary extends Summary {
  readonly text: string;
  readonly unit: string;
  /** The first member that had no answer, and why. */
  readonly unanswered: MemberNote | null;
}

/** A condition: its margin over the members, and how many hold it. */
export interface ConditionSummary extends MeasureSummary {
  /** Members that hold it. */
  readonly holds: number;
  /** holds / answered. */
  readonly share: number;
}

/** What an ensemble says. */
export interface EnsembleResult {
  readonly sampling: Sampling;
  /** Members that ran, failed ones included. */
  readonly ran: number;
  readonly failed: readonly MemberNote[];
  /** Numbers that were drawn. */
  readonly drawn: readonly TableRow[];
  /** Output times, d. */
  readonly times: readonly number[];
  readonly series: readonly SeriesBands[];
  readonly limits: readonly LimitOdds[];
  readonly measures: readonly MeasureSummary[];
  readonly conditions: readonly ConditionSummary[];
}

/** Shares of the members below the lines of the bands of a series. */
const LINES = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

function bandsOfSeries({ series, times }: Outline, accumulator: Accumulator): readonly SeriesBands[] {
  const spreads = accumulator.series;
  return series.map(({ name, unit }, index) => {
    const [low, lower, median, upper, high] = LINES.map(() => new Float64Array(times.length));
    const lines = [low, lower, median, upper, high];
    let resolution = 0;
    for (let i = 0; i < times.length; i++) {
      const cell = index * times.length + i;
      // All of one cell together: its values are sorted once.
      LINES.forEach((p, line) => (lines[line][i] = spreads.quantile(cell, p)));
      resolution = Math.max(resolution, spreads.width(cell));
    }
    return { name, unit, median, band50: [lower, upper], band90: [low, high], resolution };
  });
}

/** What an accumulator says of an ensemble, whole or not. */
export function ensembleResult(
  outline: Outline,
  sampling: Sampling,
  accumulator: Accumulator,
): EnsembleResult {
  const { judged, passed, answers, holds, failed, unanswered } = accumulator.state();
  const summaries = [...outline.measures, ...outline.conditions].map(({ text, unit }, i): MeasureSummary => ({
    text,
    unit,
    ...summaryOf(answers[i]),
    unanswered: unanswered[i],
  }));
  return {
    sampling,
    ran: accumulator.size(),
    failed,
    drawn: outline.rows,
    times: outline.times,
    series: bandsOfSeries(outline, accumulator),
    limits: outline.limits.map((limit, i) => ({
      ...limit,
      judged: judged[i],
      passed: passed[i],
      probability: passed[i] / judged[i],
      first: bandsOf((p) => accumulator.limits.quantile(2 * i, p)),
      total: bandsOf((p) => accumulator.limits.quantile(2 * i + 1, p)),
    })),
    measures: summaries.slice(0, outline.measures.length),
    conditions: summaries.slice(outline.measures.length).map((summary, i) => {
      const held = holds[i].reduce((sum, each) => sum + each, 0);
      return { ...summary, holds: held, share: held / summary.answered };
    }),
  };
}

/**
 * Runs members of an ensemble by their number, 0 to N - 1, each on its own. Throws InputError for a sampling that cannot
 * be.
 * @param open the system, read
 * @param basis what is drawn, and the measures and conditions of each member, as `basisOf` gives it
 * @param sampling how members are drawn
 * @param options relative `tolerance` of the integration and `onDay` as for `simulate`, and `allocate`, which gives the array
 *   for so many numbers of the series of a member (default: a new one each)
 */
export function openMembers(
  open: ExtendedScenario,
  { rows, measures, conditions }: Pick<Basis, 'rows' | 'measures' | 'conditions'>,
  sampling: Sampling,
  {
    allocate,
    ...options
  }: Omit<RunsOptions, 'reuse'> & { readonly allocate?: (size: number) => Float64Array } = {},
): (member: number) => MemberOutcome {
  const runAt = openRuns(open, rows, { ...options, reuse: true });
  const draw = openSampling(
    sampling,
    rows.map(({ id }) => id),
  );
  return (member) => {
    try {
      return memberOf(runAt(draw(member)), measures, conditions, allocate);
    } catch (error) {
      if (error instanceof InputError) return { kind: 'failed', reason: error.message };
      throw error;
    }
  };
}

/**
 * An ensemble run in one go: members drawn from the ranges of every number that the system uses, bands of
 * every series, the odds of passing each limit, and every measure and condition. A member whose run breaks off is
 * counted and named, and in no band. `tolerance` is the relative one of the integration.
 * Throws InputError for a sampling, measures or conditions that cannot be.
 */
export function ensembleOf(
  open: ExtendedScenario,
  sampling: Sampling,
  questions: Questions = { measures: [], conditions: [] },
  options: { readonly tolerance?: number } = {},
): EnsembleResult {
  const basis = basisOf(open, questions, options);
  const run = openMembers(open, basis, sampling, options);
  const accumulator = openAccumulator(basis, sampling.members);
  for (let member = 0; member < sampling.members; member++) accumulator.add(member, run(member));
  return ensembleResult(basis, sampling, accumulator);
}
