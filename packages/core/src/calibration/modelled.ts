import { type FitProblem, predictionsOf, type Sought } from './fit-problem.js';
import { pacesOf } from './paces.js';
import { predictThrough, type WindowStart, windowStart } from './window.js';

/** What a fitted model has at times past and to come, with what is known today. */
export interface Modelled {
  /** In the order of what was looked for, in the internal unit. */
  readonly values: Float64Array;
  /** The same at each pace that a start-up may have; absent: it is none. */
  readonly paced?: readonly Float64Array[];
  /** Where the run was begun anew; absent: the long fit stands, as in a start-up, whose past is all of it. */
  readonly start?: WindowStart;
}

/**
 * What the model has by the state that the last weeks support, or at each pace of a start-up; undefined where its run breaks
 * off.
 * @param at standard deviates of the long fit
 */
export function modelledAt(
  problem: FitProblem,
  at: ArrayLike<number>,
  sought: readonly Sought[],
): Modelled | undefined {
  const scenario = problem.scenarioAt(at);
  const run = problem.runOf(scenario);
  const values = predictionsOf(run, sought);
  if (values === undefined) return undefined;
  const paces = pacesOf(run, scenario, problem.days - problem.ahead);
  if (paces !== undefined) {
    const paced = paces.flatMap((each) => problem.predictOf(each, sought) ?? []);
    return paced.length === paces.length ? { values, paced } : { values };
  }
  const open = windowStart(problem, at);
  const late = open && predictThrough(problem, at, sought, open);
  return open === undefined || late === undefined
    ? { values }
    : { values: late, start: { day: open.day, moved: open.moved } };
}
