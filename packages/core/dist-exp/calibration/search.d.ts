import { Matrix } from 'ml-matrix';
import { type FitProblem } from './fit-problem.js';
import { type Loss } from './reading-loss.js';
/** Predictions that should come near to observations, by numbers that may vary. */
export interface Problem {
    /** How many numbers vary. */
    readonly size: number;
    /** One prediction an observation; undefined where the model gives none. */
    predict(at: Float64Array): Float64Array | undefined;
    /** What observation i costs at a prediction. */
    loss(i: number, predicted: number): Loss;
    /** Derivatives of the predictions: a row an observation, a column a number. */
    jacobian(at: Float64Array, predicted: Float64Array): Matrix;
    /** Whether half the sum of squares of the numbers is added: standard normal priors. */
    readonly prior: boolean;
}
export interface MinimiseOptions {
    /** Most derivatives taken; default 100. */
    readonly most?: number;
    /** Done when a step promises to lower the sum by less than this; default 1e-14 of the sum. */
    readonly gain?: number;
    /**
     * Whether derivatives are carried on by C. G. Broyden's update (Math. Comp. 19, 1965) after good steps and taken anew
     * only where a step disappoints, and before it is called done: for models that take long to run.
     */
    readonly carryOn?: boolean;
}
/** Where it ended. */
export interface Minimum {
    readonly at: Float64Array;
    readonly predicted: Float64Array;
    readonly jacobian: Matrix;
    /** Sum of the losses, and of the prior's half squares. */
    readonly value: number;
    readonly converged: boolean;
    /** Derivatives taken. */
    readonly steps: number;
}
/**
 * Lowest sum of losses by Levenberg and Marquardt's method: damped Gauss-Newton steps, columns scaled by the longest
 * that they were (J. J. More, in Numerical Analysis, Lecture Notes in Mathematics 630, 1978), damping by the gain
 * ratio (H. B. Nielsen, IMM-REP-1999-05).
 *
 * @param start where to begin; its prediction must exist
 * @throws RangeError where the model gives no prediction at the start
 */
export declare function minimise(problem: Problem, start: Float64Array, options?: MinimiseOptions): Minimum;
type Predict = (at: Float64Array) => Float64Array | undefined;
/**
 * Derivatives of predictions by differences: a row a prediction, a column a number. Where the model fails on one side
 * the other is taken.
 *
 * @param both whether differences are central (twice the work, the error of the square of the step)
 * @throws RangeError where the model fails on both sides of a number
 */
export declare function differences(predict: Predict, at: Float64Array, predicted: Float64Array, step: (j: number) => number, both: boolean): Matrix;
/**
 * Minima of a problem in standard deviates: from their middle, and from the best of some spread starts; the first is
 * that from the middle.
 * @param further how many starts besides the middle, if so many places have a prediction
 * @throws RangeError where the model gives no prediction at the middle
 */
export declare function minimaFrom(problem: Problem, further: number, seed: number, options: MinimiseOptions): readonly Minimum[];
/** Steps of the differences, in standard deviations of the priors: fine beside kits, coarse beside the runs' tolerance. */
export declare const differenceStep = 0.1;
/** A step that promises less than this of the log posterior is not worth a derivative. */
export declare const enough = 0.01;
/** The search's problem: predictions of every reading and what they cost. */
export declare function searchProblem(problem: FitProblem): Problem;
export {};
//# sourceMappingURL=search.d.ts.map