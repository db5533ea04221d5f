import { differences } from './differences.js';
import { soughtOf, type FitProblem } from './fit-problem.js';
import type { Problem } from './minimise.js';
import { lossOf } from './reading-loss.js';

/** Steps of the differences, in standard deviations of the priors: fine beside kits, coarse beside the runs' tolerance. */
export const differenceStep = 0.1;

/** A step that promises less than this of the log posterior is not worth a derivative. */
export const enough = 0.01;

/** The search's problem: predictions of every reading and what they cost. */
export function searchProblem(problem: FitProblem): Problem {
  const sought = soughtOf(problem.observations);
  const errors = problem.observations.map(({ reading }) => problem.errorOf(reading.reads));
  const predict = (at: Float64Array): Float64Array | undefined => problem.predict(at, sought);
  return {
    size: problem.free.length,
    predict,
    loss: (i, predicted) => {
      const { low, high } = problem.observations[i].reading;
      return lossOf(low, high, predicted, errors[i]);
    },
    jacobian: (at, predicted) => differences(predict, at, predicted, () => differenceStep, false),
    prior: true,
  };
}
