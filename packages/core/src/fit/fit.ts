import type { WaterLog } from '../log/water-log.js';
import { scenarioHash, version } from '../result/manifest.js';
import { sha256 } from '../result/sha-256.js';
import { openFitProblem, type FitProblem, type FitRequest } from './fit-problem.js';
import { minimise, type Minimum, type Problem } from './minimise.js';
import { readingLoss } from './reading-loss.js';
import { differenceStep, enough, searchProblem } from './search-problem.js';
import { spreadStarts } from './starts.js';
import { whatItTells, type FitFindings } from './what-it-tells.js';

/** How the search is made. */
export interface FitSearch extends FitRequest {
  /** Where the search begins besides the middle of the priors; default 1. */
  readonly furtherStarts?: number;
  /** Seed of those starts; default 1. */
  readonly seed?: number;
}

/** One search. */
interface FitStart {
  /** Minus log posterior, but for a constant. */
  readonly value: number;
  readonly converged: boolean;
  /** Runs' derivatives that were taken. */
  readonly steps: number;
}

/** What a fit was made of, so that it can be made again. */
interface FitProvenance {
  readonly version: string;
  /** SHA-256 of the scenario as it was before the fit. */
  readonly scenario: string;
  /** SHA-256 of what was read of the log. */
  readonly log: string;
  readonly from: string;
  readonly until: string;
  readonly free: readonly string[];
  readonly unloggedFeed: string;
  readonly starts: number;
  readonly seed: number;
}

/** A system fitted to a log. */
export interface Fit extends FitFindings {
  readonly title: string;
  readonly provenance: FitProvenance;
  readonly readings: number;
  readonly starts: readonly FitStart[];
  readonly notes: readonly string[];
}

/** Days ahead in which a further test is looked for. */
const testsAhead = 28;

/** The sum of losses at a start, Infinity where the model breaks off. */
function costAt(problem: FitProblem, search: Problem, at: Float64Array): number {
  const predicted = search.predict(at);
  if (predicted === undefined) return Infinity;
  return problem.observations.reduce(
    (sum, { reading: { low, high, reads } }, i) =>
      sum + readingLoss(low, high, predicted[i], problem.errorOf(reads)),
    at.reduce((sum, each) => sum + (each * each) / 2, 0),
  );
}

/** Lowest minimum from the middle of the priors and from the best of some spread starts. */
function searched(
  problem: FitProblem,
  further: number,
  seed: number,
): { best: Minimum; all: readonly FitStart[] } {
  const search = searchProblem(problem);
  const size = problem.free.length;
  const spread = spreadStarts(3 * further, size, seed)
    .map((at) => ({ at, cost: costAt(problem, search, at) }))
    .filter(({ cost }) => cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, further);
  const minima = [new Float64Array(size), ...spread.map(({ at }) => at)].map((start) =>
    minimise(search, start, { gain: enough, most: 30, carryOn: true }),
  );
  const best = minima.reduce((low, each) => (each.value < low.value ? each : low));
  return { best, all: minima.map(({ value, converged, steps }) => ({ value, converged, steps })) };
}

/** Hash of what was read of a log: intervals, feed and their dates. */
function logHash({ readings, feed }: WaterLog): string {
  const facts = readings.map(({ date, hour, reads, vessel, low, high }) => [
    ...[date, hour, reads, vessel],
    ...[low, high].map(String),
  ]);
  return sha256(JSON.stringify([facts, feed.map(({ date, cohort, grams }) => [date, cohort, grams])]));
}

/**
 * Fits a system to a log: the numbers with the highest posterior probability (ranges of the tables as priors, readings
 * as intervals of a kit that errs and is sometimes spoilt), with what the log tells of them.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export function fit(request: FitSearch): Fit {
  const { log, furtherStarts = 1, seed = 1 } = request;
  const problem = openFitProblem(request);
  const { best, all } = searched(problem, furtherStarts, seed);
  const ahead = openFitProblem(request, testsAhead);
  const findings = whatItTells(ahead, best, differenceStep);
  return {
    title: problem.scenario.title,
    provenance: {
      version,
      scenario: scenarioHash(request.system.read([]).scenario),
      log: logHash(log),
      from: log.from,
      until: problem.until,
      free: problem.free.map(({ name }) => name),
      unloggedFeed: request.unloggedFeed ?? 'last',
      starts: all.length,
      seed,
    },
    readings: problem.observations.length,
    starts: all,
    notes: [
      ...problem.notes,
      ...(all.every(({ converged }) => converged) ? [] : ['warning: a search stopped before it was at rest']),
    ],
    ...findings,
  };
}
