import { limitsOf } from '../../result/limits.js';
import { allSeries } from '../../result/series.js';
import type { Run } from '../../run/run.js';
import type { Condition } from '../ask/condition.js';
import type { Measure } from '../ask/measure.js';
import { NoAnswerError } from '../ask/no-answer-error.js';

/** What one number of a run is, or why it has none. */
export interface Answer {
  /** NaN where the run has no answer. */
  readonly value: number;
  readonly reason?: string;
}

/** What an ensemble keeps of one member: a whole run, or why it failed. Holds no more than plain data. */
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

/** Numbers kept of a limit. */
export const LIMIT_NUMBERS = 3;

/** The answer of a run, or its reason for having none. */
function answerOf(ask: () => number): Answer {
  try {
    return { value: ask() };
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
 * Takes from a run what an ensemble keeps of it.
 * @param room gives the array for so many numbers of the series; default: a new one
 */
export function memberOf(
  run: Run,
  measures: readonly Measure[],
  conditions: readonly Condition[],
  room: (size: number) => Float64Array = (size) => new Float64Array(size),
): MemberOutcome {
  if (run.outcome.kind !== 'done') return { kind: 'failed', reason: reasonOf(run) };
  const all = allSeries(run);
  const width = run.samples.length;
  const series = room(all.length * width);
  all.forEach(({ values }, i) => {
    series.set(values, i * width);
  });
  const stood = limitsOf(run, all);
  const limits = stood.flatMap(({ judged, first = Number.NaN, total }) => [judged ? 1 : 0, first, total]);
  return {
    kind: 'done',
    series,
    limits: Float64Array.from(limits),
    measures: measures.map((measure) => answerOf(() => measure.of(run))),
    conditions: conditions.map((condition) => {
      let holds = false;
      const answer = answerOf(() => {
        const judgement = condition.judge(run, stood);
        holds = judgement.holds;
        return judgement.margin;
      });
      return { ...answer, holds };
    }),
  };
}
