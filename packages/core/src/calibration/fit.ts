import { scenarioHash, version } from '../result/record.js';
import { openFitProblem, type FitRequest } from './fit-problem.js';
import { differenceStep, enough, searchProblem } from './search.js';
import { minimaFrom } from './search.js';
import { logHash } from './readings.js';
import { diagnosticsOf, type FitDiagnostics } from './diagnostics.js';

/** How the search is made. */
export interface FitSearch extends FitRequest {
  /** Where the search begins besides the middle of the priors; default 1. */
  readonly furtherStarts?: number;
  /** Seed of those starts; default 1. */
  readonly seed?: number;
}

/** One search. */
export interface FitStart {
  /** Minus log posterior, but for a constant. */
  readonly value: number;
  readonly converged: boolean;
  /** Runs' derivatives that were taken. */
  readonly steps: number;
}

/** What a fit was made of, so that it can be made again. */
export interface FitProvenance {
  readonly version: string;
  /** SHA-256 of the scenario as it was before the fit. */
  readonly scenario: string;
  /** SHA-256 of what was read of the log up to `until`. */
  readonly log: string;
  readonly from: string;
  readonly until: string;
  readonly free: readonly string[];
  readonly unloggedFeed: string;
  /** Searches made. */
  readonly starts: number;
  /** Of the places where searches begin. */
  readonly seed: number;
}

/** A system fitted to a log. */
export interface Fit extends FitDiagnostics {
  readonly title: string;
  readonly provenance: FitProvenance;
  /** How many readings the fit was made to. */
  readonly readings: number;
  readonly starts: readonly FitStart[];
  readonly notes: readonly string[];
}

/** Days ahead in which a further test is looked for. */
const testsAhead = 28;

/**
 * Fits a system to a log: the numbers with the highest posterior probability (ranges of the tables as priors, readings
 * as intervals of a kit that errs and is sometimes spoilt), with what the log tells of them.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export function fit(request: FitSearch): Fit {
  const { log, furtherStarts = 1, seed = 1 } = request;
  const problem = openFitProblem(request);
  const minima = minimaFrom(searchProblem(problem), furtherStarts, seed, {
    gain: enough,
    most: 30,
    carryOn: true,
  });
  const best = minima.reduce((low, each) => (each.value < low.value ? each : low));
  const all = minima.map(({ value, converged, steps }) => ({ value, converged, steps }));
  const ahead = openFitProblem(request, testsAhead);
  const diagnostics = diagnosticsOf(ahead, best, differenceStep);
  return {
    title: problem.scenario.title,
    provenance: {
      version,
      scenario: scenarioHash(request.system.read([]).scenario),
      log: logHash(log, problem.until),
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
    ...diagnostics,
  };
}
