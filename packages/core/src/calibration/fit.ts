import { type Jump, jumpsIn } from '../log/jumps.js';
import { type Missing, missingIn } from './missing.js';
import { type FitVerdict, verdictOfFit } from './verdict.js';
import { scenarioHash, version } from '../result/record.js';
import { type FitProblem, openFitProblem, type FitRequest } from './fit-problem.js';
import type { FirstRation } from './with-log.js';
import type { Offset } from './instruments.js';
import type { Counting } from './correlated.js';
import { differenceStep, enough, minimise, type Minimum, searchProblem } from './search.js';
import {
  bestOf,
  firstSearches,
  pastFits,
  type PastFit,
  screening,
  searchedFrom,
  searchedOn,
  slopesAtMiddle,
  trusting,
} from './search-fit.js';
import { answered, type Asking, sideBySide } from './wanted.js';
import { withoutLogged } from './fitted-system.js';
import { dayOf, logHash } from './readings.js';
import { diagnosticsOf, type FitDiagnostics, type Slopes, slopesAt } from './diagnostics.js';

/** How the search is made. */
export interface FitSearch extends FitRequest {
  /** Where the search begins besides the middle of the priors; default 1. */
  readonly furtherStarts?: number;
  /** Seed of those starts; default 1. */
  readonly seed?: number;
  /** How many fits to parts of the log are made besides, so that forecasts know what they were worth; default 4. */
  readonly pastFits?: number;
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
export interface Fit extends FitDiagnostics, FitVerdict {
  readonly title: string;
  readonly provenance: FitProvenance;
  /** What films that the file calls cycled have grown on in place of its rations; none where those stand. */
  readonly grownOn: readonly FirstRation[];
  /** How many readings the fit was made to. */
  readonly readings: number;
  readonly starts: readonly FitStart[];
  /** Fits to the log as it was known at earlier dates. */
  readonly past: readonly PastFit[];
  /** Of a fit that is not to be trusted in all: what would bring it nearest to its log, most first. */
  readonly missing: readonly Missing[];
  /** Falls of nitrate that may be water changes nobody wrote down. */
  readonly jumps: readonly Jump[];
  /** How much instruments of one quantity differ. */
  readonly instruments: readonly Offset[];
  readonly notes: readonly string[];
}

/** Shares of the log that fits to its past are made of. */
const pastShares = { from: 0.3, to: 0.85 } as const;

/** Days up to which the log is known to fits of its past, evenly over its later part. */
function pastDays(
  { scenario, until }: FitProblem,
  { log, pastFits: count = 4 }: FitSearch,
): readonly number[] {
  const from = Math.max(0, dayOf(scenario, log.from));
  const span = dayOf(scenario, until) - from;
  return Array.from({ length: count }, (_, i) => {
    const share = pastShares.from + ((pastShares.to - pastShares.from) * i) / Math.max(1, count - 1);
    return Math.round(from + share * span);
  });
}

/** Days ahead in which a further test is looked for. */
const testsAhead = 28;

/** How often a search goes on where derivatives at its end show that it was not at rest. */
const proofs = 4;

/**
 * Where a fit ended, proven by derivatives taken there, with those of the tests that could be made.
 * @param ahead the same with days ahead for the tests
 */
function* proven(problem: FitProblem, ahead: FitProblem, best: Minimum, counting: readonly Counting[]) {
  let end = best;
  const sought = searchProblem(problem, counting);
  const rows = problem.observations.length;
  for (let proof = 1; ; proof++) {
    const slopes: Slopes = yield* slopesAt(ahead, end.at, differenceStep);
    const jacobian = slopes.jacobian.subMatrix(0, rows - 1, 0, problem.free.length - 1);
    const predicted = slopes.predicted.slice(0, rows);
    const on: Minimum = yield* minimise(sought, end.at, { ...trusting, jacobian, predicted });
    // What it found is within what runs at their tolerance tell.
    const still = end.value - on.value < 2 * enough;
    if (still || proof === proofs) return { end, slopes, converged: still };
    end = on;
  }
}

/**
 * A fit to a log that asks for the predictions it needs: the numbers with the highest posterior probability (ranges of the
 * tables as priors, readings as intervals of a kit that errs and is sometimes spoilt), with what the log tells of them.
 * `fit` answers it here and now.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export function* fitAsking(request: FitSearch): Asking<Fit> {
  const { log, furtherStarts = 1, seed = 1 } = request;
  const problem = openFitProblem(request);
  const screened = { problem, rough: screening(request, problem) };
  const slopes = yield* slopesAtMiddle(screened.rough);
  // A fit to the past stands for one of the further places, where there is one.
  const days = pastDays(problem, request);
  const warm = furtherStarts > 0 && days.length > 0 ? 1 : 0;
  const [past, first] = yield* sideBySide(
    pastFits(request, problem, slopes, days),
    firstSearches(screened, slopes, furtherStarts - warm, seed),
  );
  const last = warm === 0 ? undefined : past.at(-1);
  const found =
    last === undefined ? first : [...first, yield* searchedFrom(screened, last.deviates, bestOf(first))];
  const { minima, counting } = yield* searchedOn(problem, found);
  const ahead = openFitProblem({ ...request, numbers: problem.free }, testsAhead);
  const { end: best, slopes: there, converged } = yield* proven(problem, ahead, bestOf(minima), counting);
  const all = minima.map(({ value, converged, steps }) => ({ value, converged, steps }));
  const diagnostics = diagnosticsOf(ahead, best, there, counting);
  const { numbers, spoilt } = diagnostics;
  const verdict = verdictOfFit(problem, best.predicted, numbers, spoilt, minima);
  return {
    title: problem.scenario.title,
    provenance: {
      version,
      scenario: scenarioHash(withoutLogged(request.system.read([]).scenario, request.system)),
      log: logHash(log, problem.until),
      from: log.from,
      until: problem.until,
      free: problem.free.map(({ name }) => name),
      unloggedFeed: request.unloggedFeed ?? 'last',
      starts: all.length,
      seed,
    },
    grownOn: problem.grownOn,
    readings: problem.observations.length,
    starts: all,
    past,
    ...verdict,
    missing: verdict.verdict === 'trusted' ? [] : missingIn(problem, best, counting),
    jumps: jumpsIn(log),
    instruments: problem.offsets,
    notes: [
      ...problem.notes,
      ...(converged && all.every((each) => each.converged)
        ? []
        : ['warning: a search stopped before it was at rest']),
    ],
    ...diagnostics,
  };
}

/**
 * Fits a system to a log, as `fitAsking` does, on this thread.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export const fit = (request: FitSearch): Fit => answered(fitAsking(request));
