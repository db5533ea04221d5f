import { withTableCorrelations } from '../../library/correlations.js';
import type { TableRow } from '../../library/table-row.js';
import { type ExtendedScenario, openModel } from '../../model/open-model.js';
import type { Extension } from '../../model/own.js';
import type { PlacedLimit } from '../../result/limit-check.js';
import { limitNames, limitsOf } from '../../result/limits.js';
import { contentHash } from '../../base/content-hash.js';
import { scenarioHash, version } from '../../result/record.js';
import { allSeries } from '../../result/series.js';
import { rowOf } from '../../library/rows-in-use.js';
import { simulate } from '../../run/stepping.js';
import type { Run } from '../../run/run.js';
import { outputTimes } from '../../run/sample-buffer.js';
import { type Condition, conditionOf } from '../measures/condition.js';
import { type Measure, measureOf } from '../measures/measure.js';
import { NoAnswerError } from '../measures/phrase.js';

/** Measures and conditions of every run, as text: see `measureOf` and `conditionOf`. */
export interface Questions {
  readonly measures: readonly string[];
  readonly conditions: readonly string[];
}

/** What an ensemble is about, as plain data. */
export interface Outline {
  readonly title: string;
  readonly measures: readonly Pick<Measure, 'text' | 'unit'>[];
  readonly conditions: readonly Pick<Condition, 'text' | 'unit'>[];
  /** Every number with a range that reading, running and judging used, sorted by id. */
  readonly rows: readonly TableRow[];
  readonly series: readonly { readonly name: string; readonly unit: string }[];
  readonly limits: readonly PlacedLimit[];
  /** Output times of a whole run, d. */
  readonly times: readonly number[];
  /** Hash of the scenario as a run's manifest gives it: tells of which run these are the bands. */
  readonly scenario: string;
  /** Hash of the system, the version, the tolerance and the numbers drawn. */
  readonly hash: string;
}

/** What draws are made around: a system run once with the numbers of the tables as they stand. */
export interface Basis extends Outline {
  readonly run: Run;
  /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
  readonly notes: readonly string[];
  readonly measures: readonly Measure[];
  readonly conditions: readonly Condition[];
}

const textAndUnit = ({ text, unit }: Pick<Measure, 'text' | 'unit'>): Pick<Measure, 'text' | 'unit'> => ({
  text,
  unit,
});

/** The plain part of a basis, to be saved with what was accumulated. */
export function outlineOf(basis: Basis): Outline {
  const { title, rows, series, limits, times, scenario, hash } = basis;
  const measures = basis.measures.map(textAndUnit);
  const conditions = basis.conditions.map(textAndUnit);
  return { title, measures, conditions, rows, series, limits, times, scenario, hash };
}

/** Evaluates every measure and condition, so that the numbers they read are known. */
function evaluateAll(run: Run, { measures, conditions }: Pick<Basis, 'measures' | 'conditions'>): void {
  const evaluations = [
    ...measures.map((measure) => () => measure.of(run)),
    ...conditions.map((condition) => () => condition.margin(run)),
  ];
  for (const evaluate of evaluations) {
    try {
      evaluate();
    } catch (error) {
      if (!(error instanceof NoAnswerError)) throw error;
    }
  }
}

/** What tells one extension from another: all that it says, the text of its functions with it. */
const saidBy = ({ components, processes, numbers }: Extension): string =>
  JSON.stringify({ components, processes, numbers }, (_, value: unknown) =>
    typeof value === 'function' ? value.toString() : value,
  );

/**
 * Runs a system once with the numbers as they stand, to see which of them it uses and what can be measured of it.
 * A number that only other draws would use (a process that never works here) is not drawn.
 *
 * Throws InputError with the faults of the measures and conditions.
 * @param options relative `tolerance` of the integration, and where they were written, for messages
 */
export function basisOf(
  open: ExtendedScenario,
  questions: Questions,
  options: { readonly tolerance?: number; readonly where?: { measures?: string; conditions?: string } } = {},
): Basis {
  const { scenario, resolved, extension } = open.reading;
  const { model, notes, used } = openModel(open.reading);
  const { where = {}, ...simulation } = options;
  const measures = questions.measures.map((text) => measureOf(text, model, where.measures));
  const conditions = questions.conditions.map((text) => conditionOf(text, model, where.conditions));
  const run = simulate(model, simulation);
  const series = allSeries(run);
  limitsOf(run, series);
  evaluateAll(run, { measures, conditions });
  const rows = [...used()]
    .sort()
    .map((id) => rowOf(model.parameters, id))
    .filter(({ distribution }) => distribution !== 'fixed');
  return {
    title: scenario.title,
    run,
    notes,
    measures,
    conditions,
    rows,
    series: series.map(({ name, unit }) => ({ name, unit })),
    limits: limitNames(model),
    times: outputTimes(scenario.days, scenario.every, scenario.saved?.time),
    scenario: scenarioHash(scenario),
    hash: contentHash({
      ...{ version, scenario, plain: resolved.plain, rows, tolerance: run.tolerance },
      correlations: withTableCorrelations([]),
      ...(extension && { own: saidBy(extension) }),
    }),
  };
}

/** What one number of a run is, or why it has none. */
export interface Answer {
  /** NaN where the run has no answer. */
  readonly value: number;
  readonly reason?: string;
}

/** What an ensemble takes from one member: a whole run, or why it failed. Holds no more than plain data. */
export type MemberOutcome =
  | {
      readonly kind: 'done';
      /** Series after series, one value for each output time. */
      readonly series: Float64Array;
      /** For each limit: whether judged (1 or 0), when first passed (NaN: never), how long in all. */
      readonly limits: Float64Array;
      readonly measures: readonly Answer[];
      /** Margins, and beside them whether they hold. */
      readonly conditions: readonly (Answer & { readonly holds: boolean })[];
    }
  | { readonly kind: 'failed'; readonly reason: string };

/** Numbers taken of a limit. */
export const LIMIT_NUMBERS = 3;

/** The answer of a run, or its reason for having none. */
function answerOf(evaluate: () => number): Answer {
  try {
    return { value: evaluate() };
  } catch (error) {
    if (error instanceof NoAnswerError) return { value: Number.NaN, reason: error.message };
    throw error;
  }
}

/** How a run that broke off is named. */
function reasonOf(run: Run): string {
  const { kind, time, worst } = run.outcome;
  return `${kind} on day ${time}${worst === undefined ? '' : ` at ${worst}`}`;
}

/**
 * Takes from a run what an ensemble needs of it.
 * @param allocate gives the array for so many numbers of the series; default: a new one
 */
export function memberOf(
  run: Run,
  measures: readonly Measure[],
  conditions: readonly Condition[],
  allocate: (size: number) => Float64Array = (size) => new Float64Array(size),
): MemberOutcome {
  if (run.outcome.kind !== 'done') return { kind: 'failed', reason: reasonOf(run) };
  const all = allSeries(run);
  const width = run.samples.length;
  const series = allocate(all.length * width);
  all.forEach(({ values }, i) => {
    series.set(values, i * width);
  });
  const limitResults = limitsOf(run, all);
  const limits = limitResults.flatMap(({ judged, first = Number.NaN, total }) => [
    judged ? 1 : 0,
    first,
    total,
  ]);
  return {
    kind: 'done',
    series,
    limits: Float64Array.from(limits),
    measures: measures.map((measure) => answerOf(() => measure.of(run))),
    conditions: conditions.map((condition) => {
      let holds = false;
      const answer = answerOf(() => {
        const judgement = condition.judge(run, limitResults);
        holds = judgement.holds;
        return judgement.margin;
      });
      return { ...answer, holds };
    }),
  };
}
