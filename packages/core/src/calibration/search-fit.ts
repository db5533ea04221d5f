import { dateAfter } from '../base/calendar.js';
import { type Counting, countingOf } from './correlated.js';
import type { FitProblem, FitRequest } from './fit-problem.js';
import { openFitProblem } from './fit-problem.js';
import type { Free } from './free-parameter.js';
import { dayOf } from './readings.js';
import { enough, minimise, minimaFrom, type Minimum, searchProblem } from './search.js';

/** Searches that were made, with how readings counted in the last. */
export interface Searched {
  readonly minima: readonly Minimum[];
  readonly counting: readonly Counting[];
}

const options = { gain: enough, most: 30, carryOn: true } as const;

/** Best of some minima. */
export const bestOf = (minima: readonly Minimum[]): Minimum =>
  minima.reduce((low, each) => (each.value < low.value ? each : low));

/**
 * Searches from the middle of the priors and from further places with the errors that are believed beforehand; then tells
 * from the residuals how errors go on from day to day, and goes on with that from each end.
 * @param warm one of the further places: where a fit to a part of the log ended
 */
export function searchFrom(
  problem: FitProblem,
  further: number,
  seed: number,
  warm?: ArrayLike<number>,
): Searched {
  const sought = searchProblem(problem, countingOf(problem.observations, problem.errorOf));
  const isWarm = warm !== undefined && further > 0;
  const found = [
    ...minimaFrom(sought, isWarm ? further - 1 : further, seed, options),
    ...(isWarm ? [minimise(sought, Float64Array.from(warm), options)] : []),
  ];
  const counting = countingOf(problem.observations, problem.errorOf, bestOf(found).predicted);
  const again = searchProblem(problem, counting);
  return { minima: found.map(({ at }) => minimise(again, at, options)), counting };
}

/** What was fitted to the log up to a date: where the numbers stood then. */
export interface PastFit {
  readonly until: string;
  /** Standard deviates, in the order of the numbers. */
  readonly deviates: readonly number[];
}

/** Steps of a fit to the past: it is begun where the one before it ended. */
const few = 8;

/** Least that a fit to a part of the log is made of. */
const least = { days: 21, readings: 6 };

/** Fits to the log as it was known at some days since the start of the run, each begun where the one before ended. */
export function pastFits(
  request: FitRequest,
  numbers: readonly Free[],
  days: readonly number[],
): readonly PastFit[] {
  const { scenario } = request.system.read([]);
  const from = dayOf(scenario, request.log.from);
  let start = new Float64Array(numbers.length);
  return days
    .filter((day) => day - Math.max(from, 0) >= least.days)
    .flatMap((day): PastFit[] => {
      const until = dateAfter(scenario.startDate, day);
      const problem = openFitProblem({ ...request, until, numbers });
      if (problem.observations.length < least.readings) return [];
      const counting = countingOf(problem.observations, problem.errorOf);
      const sought = searchProblem(problem, counting);
      try {
        start = Float64Array.from(minimise(sought, start, { ...options, gain: 0.1, most: few }).at);
      } catch (error) {
        // The run breaks off where the last fit stood: what was known then stays.
        if (!(error instanceof RangeError)) throw error;
      }
      return [{ until, deviates: [...start] }];
    });
}
