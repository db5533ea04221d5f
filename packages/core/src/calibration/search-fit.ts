import { Matrix } from 'ml-matrix';
import { dateAfter } from '../base/calendar.js';
import { type Counting, countingOf } from './correlated.js';
import type { FitProblem, FitRequest } from './fit-problem.js';
import { openFitProblem } from './fit-problem.js';
import { dayOf, readingKey } from './readings.js';
import {
  bestPlaces,
  differences,
  differenceStep,
  enough,
  minimise,
  type MinimiseOptions,
  predictingOf,
  type Minimum,
  searchProblem,
} from './search.js';
import { ask, type Asking } from './wanted.js';

/** Searches that were made, with how readings counted in the last. */
export interface Searched {
  readonly minima: readonly Minimum[];
  readonly counting: readonly Counting[];
}

/** How fits search: derivatives carried on, the end trusted, no creeping along a valley whose floor runs do not tell. */
export const trusting = {
  ...{ gain: enough, most: 30, carryOn: true, proofs: 0 },
  patience: { tries: 8, gain: 2 * enough },
} as const;

/**
 * Searches that end within so much of the log posterior are taken to end at one place. No step that promises less is made where
 * what it leads to is searched on from, or only compared.
 */
const samePlace = 0.5;

/** By how much of the log posterior a search may lag behind the best and be left there. */
const lagging = 1;

/** Best of some minima. */
export const bestOf = (minima: readonly Minimum[]): Minimum =>
  minima.reduce((low, each) => (each.value < low.value ? each : low));

/** By how much coarser the tolerance of runs that only screen is: they take half as long. Judgment [P]; see calibration.md. */
const coarser = 10 / 3;

/**
 * A problem by runs that only screen: derivatives at the middle of the priors, which searches carry on and the end does without,
 * and searches with kits that are taken to be coarse.
 */
export const screening = (request: FitRequest, { free, tolerance }: FitProblem): FitProblem =>
  openFitProblem({ ...request, numbers: free, tolerance: coarser * tolerance });

/** What a run has at each reading, and the derivatives there, at the middle of the priors: where every search sets out. */
export function* slopesAtMiddle(problem: FitProblem): Asking<Matrix> {
  const of = predictingOf(problem);
  const middle = new Float64Array(problem.free.length);
  const [predicted] = yield* ask(of, [middle]);
  if (predicted === undefined) throw new RangeError('no prediction at the start');
  return yield* differences(of, middle, predicted, () => differenceStep, false);
}

/**
 * By how much kits are taken to err more than they do, one search after another: readings far from the model else count as
 * spoilt, all of them, and the search stays where it began (graduated non-convexity: A. Blake, A. Zisserman, Visual
 * Reconstruction, 1987). Judgment [P].
 */
const widenings = [16, 4, 1] as const;

/** A fit's problem, and the same by runs that only screen. */
interface Screened {
  readonly problem: FitProblem;
  readonly rough: FitProblem;
}

/** A search with the errors that are believed beforehand, from a place: first as if kits were coarse, by runs that screen. */
function* widelySearched(
  { problem, rough }: Screened,
  place: ArrayLike<number>,
  jacobian: Matrix,
  from: readonly number[] = widenings,
  known?: Minimum,
): Asking<Minimum> {
  const counting = countingOf(problem.observations, problem.errorOf);
  let end: Pick<Minimum, 'at' | 'jacobian'> & Partial<Minimum> = { at: Float64Array.from(place), jacobian };
  for (const times of from) {
    const wide = counting.map(({ wider, weight }) => ({ wider: times * wider, weight }));
    const { at, jacobian: carried, predicted } = end;
    const sought = searchProblem(times > 1 ? rough : problem, wide);
    end = yield* minimise(sought, at, {
      ...trusting,
      gain: samePlace,
      jacobian: carried,
      ...(times > 1 && predicted && { predicted }),
      ...(times === 1 && known && { known: { sum: known.value, within: samePlace } }),
    });
  }
  return end as Minimum;
}

/** Searches with the errors that are believed beforehand, from the middle of the priors and from the best of spread places. */
export function* firstSearches(
  screened: Screened,
  slopes: Matrix,
  further: number,
  seed: number,
): Asking<readonly Minimum[]> {
  const { rough } = screened;
  const sought = searchProblem(rough, countingOf(rough.observations, rough.errorOf));
  const places = [new Float64Array(rough.free.length), ...(yield* bestPlaces(sought, further, seed))];
  const found: Minimum[] = [];
  for (const place of places) {
    const first = found.at(0);
    found.push(yield* widelySearched(screened, place, first?.jacobian ?? slopes, widenings, first));
  }
  return found;
}

/**
 * A search as `firstSearches` makes them, from a place that a fit has found: kits are taken to be less coarse at its start.
 * @param best of the searches before, whose derivatives it begins with: where it comes as low, it ends
 */
export const searchedFrom = (screened: Screened, place: ArrayLike<number>, best: Minimum): Asking<Minimum> =>
  widelySearched(screened, place, best.jacobian, widenings.slice(1), best);

/**
 * Tells from the residuals of the best of some searches how errors go on from day to day, and goes on with that from each
 * end. Searches that end at the same place go on as one. Who uses the best proves it by derivatives there.
 */
export function* searchedOn(problem: FitProblem, found: readonly Minimum[]): Asking<Searched> {
  const best = bestOf(found);
  const counting = countingOf(problem.observations, problem.errorOf, best.predicted);
  const again = searchProblem(problem, counting);
  const goOn = ({ at, jacobian, predicted }: Minimum, how: MinimiseOptions): Asking<Minimum> =>
    minimise(again, at, { ...how, jacobian, predicted });
  const ofBest = yield* goOn(best, trusting);
  // Of the others it is only told whether they end elsewhere.
  const others = { ...trusting, gain: samePlace, known: { sum: ofBest.value, within: samePlace } };
  const minima: Minimum[] = [];
  for (const each of found)
    minima.push(each.value - best.value < samePlace ? ofBest : yield* goOn(each, others));
  // One that lags may have been led astray by derivatives that were carried too far.
  const low = bestOf(minima).value;
  for (const [i, { at, predicted, value }] of minima.entries())
    if (value > low + lagging) minima[i] = yield* minimise(again, at, { ...trusting, predicted });
  return { minima, counting };
}

/** What was fitted to the log up to a date: where the numbers stood then. */
export interface PastFit {
  readonly until: string;
  /** Standard deviates, in the order of the numbers. */
  readonly deviates: readonly number[];
}

/** Derivatives that a fit to the past may take: it is begun where the one before it ended. */
const few = 3;

/** Least that a fit to a part of the log is made of. */
const least = { days: 21, readings: 6 };

/**
 * Fits to the log as it was known at some days since the start of the run, each begun where the one before ended.
 * @param slopes derivatives of each observation of the whole log at the middle of the priors; carried along
 */
export function* pastFits(
  request: FitRequest,
  whole: FitProblem,
  slopes: Matrix,
  days: readonly number[],
): Asking<readonly PastFit[]> {
  const numbers = whole.free;
  const { scenario } = whole;
  const from = dayOf(scenario, request.log.from);
  const rowOf = new Map(whole.observations.map(({ reading }, i) => [readingKey(reading), i]));
  const carried = slopes.clone();
  let start = new Float64Array(numbers.length);
  const fits: PastFit[] = [];
  for (const day of days) {
    if (day - Math.max(from, 0) < least.days) continue;
    const until = dateAfter(scenario.startDate, day);
    const problem = openFitProblem({ ...request, until, numbers });
    if (problem.observations.length < least.readings) continue;
    const rows = problem.observations.map(({ reading }) => rowOf.get(readingKey(reading)) ?? -1);
    const jacobian = new Matrix(rows.map((row) => carried.getRow(row)));
    const sought = searchProblem(problem, countingOf(problem.observations, problem.errorOf));
    try {
      const end = yield* minimise(sought, start, { ...trusting, most: few, jacobian });
      start = Float64Array.from(end.at);
      rows.forEach((row, i) => carried.setRow(row, end.jacobian.getRow(i)));
    } catch (error) {
      // The run breaks off where the last fit stood: what was known then stays.
      if (!(error instanceof RangeError)) throw error;
    }
    fits.push({ until, deviates: [...start] });
  }
  return fits;
}
