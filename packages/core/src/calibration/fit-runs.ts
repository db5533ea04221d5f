import { withTests } from './diagnostics.js';
import { type Fit, fitAsking, type FitSearch } from './fit.js';
import { openFitProblem } from './fit-problem.js';
import { predictingOf } from './search.js';
import { answeredBy, type FitPart, partOf, type Predicting } from './wanted.js';

/** A run that a fit asks for, in plain data: a part of the log at deviates of the free numbers. */
export interface FitRun extends FitPart {
  /** Standard deviates, in the order of the numbers. */
  readonly at: Float64Array;
}

/** What a run gives: a value for each reading and test of its part, in the internal unit; undefined where it breaks off. */
export type FitRunValues = Float64Array | undefined;

/**
 * Opens the runs of a fit for who makes them apart from it, such as a worker. They give what the fit's own would, to the
 * last bit. The first run of a part throws InputError as openFitProblem does.
 */
export function openFitRuns(request: FitSearch): (run: FitRun) => FitRunValues {
  const parts = new Map<string, Predicting>();
  return ({ at, ...part }) => {
    const key = JSON.stringify(partOf(part));
    let of = parts.get(key);
    if (of === undefined) {
      const { until, tolerance, ahead, free: numbers } = part;
      const problem = openFitProblem({ ...request, until, tolerance, numbers }, ahead);
      of = ahead > 0 ? withTests(problem) : predictingOf(problem);
      parts.set(key, of);
    }
    return of.predict(at);
  };
}

/**
 * Fits as `fit` does, to the same bytes, with runs that another makes: all that it waits for at a time are handed over at
 * once, to be made side by side.
 * @param make gives what each run gives, in their order
 * @throws InputError and RangeError as `fit` does; what `make` rejects with
 */
export function fitBy(
  request: FitSearch,
  make: (runs: readonly FitRun[]) => Promise<readonly FitRunValues[]>,
): Promise<Fit> {
  return answeredBy(fitAsking(request), async (wanted) => {
    const runs = wanted.flatMap(({ of: { part }, at }) => {
      if (part === undefined) throw new TypeError('a prediction that is of no part of the fit');
      return at.map((each): FitRun => ({ ...part, at: each }));
    });
    const made = await make(runs);
    let next = 0;
    return wanted.map(({ at }) => at.map(() => made[next++]));
  });
}
