import { type FitProblem, predictionsOf, type Sought } from './fit-problem.js';
import { endStateOf } from '../run/saved.js';
import { pacesOf } from './paces.js';
import { openWindow, predictThrough, type WindowStart, windowStart } from './window.js';

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
 * off. The long fit is run up to the window and on from there: what lies before the window is run once.
 * @param at standard deviates of the long fit
 */
export function modelledAt(
  problem: FitProblem,
  at: ArrayLike<number>,
  sought: readonly Sought[],
): Modelled | undefined {
  const scenario = problem.scenarioAt(at);
  const window = openWindow(problem, at);
  const runs = window === undefined ? [problem.runOf(scenario)] : [window.before, window.after];
  const values =
    window === undefined
      ? predictionsOf(runs[0], sought)
      : predictThrough(sought, window, (late) => predictionsOf(window.after, late));
  if (values === undefined) return undefined;
  const paces = pacesOf(runs, scenario, problem.days - problem.ahead);
  if (paces !== undefined) {
    const paced = paces.flatMap((each) => problem.predictOf(each, sought) ?? []);
    return paced.length === paces.length ? { values, paced } : { values };
  }
  const start = window && windowStart(problem, at, window);
  if (window === undefined || start === undefined) return { values };
  const saved = start.moved(endStateOf(window.before));
  const moved = predictThrough(sought, window, (late) => problem.predictOf({ ...scenario, saved }, late));
  return moved === undefined ? { values } : { values: moved, start };
}
