import { wholePower } from '../base/elementary.js';
import { Matrix, QrDecomposition } from 'ml-matrix';
import { normalQuantile } from '../base/normal.js';
import { createRandom } from '../base/random.js';
import { type FitProblem, soughtOf } from './fit-problem.js';
import { type Counting, countedLoss } from './correlated.js';
import type { Loss } from './reading-loss.js';
import { ask, type Asking, partOf, type Predicting } from './wanted.js';

/** Predictions that should come near to observations, by numbers that may vary. */
export interface Problem extends Predicting {
  /** How many numbers vary. */
  readonly size: number;
  /** What observation i costs at a prediction. */
  loss(i: number, predicted: number): Loss;
  /** Derivatives of the predictions: a row an observation, a column a number. */
  jacobian(at: Float64Array, predicted: Float64Array): Asking<Matrix>;
  /** Whether half the sum of squares of the numbers is added: standard normal priors. */
  readonly prior: boolean;
}

export interface MinimiseOptions {
  /** Most derivatives taken; default 100. */
  readonly most?: number;
  /** Done when a step promises to lower the sum by less than this; default 1e-14 of the sum. */
  readonly gain?: number;
  /**
   * Whether derivatives are carried on by C. G. Broyden's update (Math. Comp. 19, 1965) and taken anew only where steps
   * disappoint, and to prove the end: for models that take long to run.
   */
  readonly carryOn?: boolean;
  /** Done too when so many tries, derivatives taken anew among them, lowered the sum by less than `gain` in all; default never. */
  readonly patience?: { readonly tries: number; readonly gain: number };
  /** The sum that another search came to: done too where the sum is within so much of it, and no step promises more. */
  readonly known?: { readonly sum: number; readonly within: number };
  /** How often an end is proven by derivatives taken anew there before it is trusted; default Infinity. */
  readonly proofs?: number;
  /** Derivatives near the start, to be carried on in place of those there. */
  readonly jacobian?: Matrix;
  /** Predictions at the start, where they are known. */
  readonly predicted?: Float64Array;
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

/** The sum of losses, and of the prior, at numbers and their predictions; Infinity where there are none. */
function sumAt(problem: Problem, at: Float64Array, predicted: Float64Array | undefined): number {
  if (predicted === undefined) return Infinity;
  let sum = problem.prior ? at.reduce((total, each) => total + (each * each) / 2, 0) : 0;
  for (let i = 0; i < predicted.length; i++) sum += problem.loss(i, predicted[i]).value;
  return Number.isNaN(sum) ? Infinity : sum;
}

/** Least-squares rows of a step: curvature's root times the derivatives, and what they should come to. */
function rowsOf(
  problem: Problem,
  at: Float64Array,
  predicted: Float64Array,
  jacobian: Matrix,
): { left: Matrix; right: Float64Array } {
  const extra = problem.prior ? problem.size : 0;
  const left = Matrix.zeros(predicted.length + extra, problem.size);
  const right = new Float64Array(predicted.length + extra);
  for (let i = 0; i < predicted.length; i++) {
    const { slope, curvature } = problem.loss(i, predicted[i]);
    if (!(curvature > 1e-200)) continue;
    const root = Math.sqrt(curvature);
    right[i] = -slope / root;
    for (let j = 0; j < problem.size; j++) left.set(i, j, root * jacobian.get(i, j));
  }
  for (let j = 0; j < extra; j++) {
    left.set(predicted.length + j, j, 1);
    right[predicted.length + j] = -at[j];
  }
  return { left, right };
}

/** The damped step, in numbers scaled to columns of length 1, by the QR of the rows with the damping below them. */
function stepOf(left: Matrix, right: Float64Array, scale: Float64Array, damping: number): Float64Array {
  const { rows, columns } = left;
  const whole = Matrix.zeros(rows + columns, columns);
  const target = Matrix.zeros(rows + columns, 1);
  for (let i = 0; i < rows; i++) {
    target.set(i, 0, right[i]);
    for (let j = 0; j < columns; j++) whole.set(i, j, left.get(i, j) / scale[j]);
  }
  for (let j = 0; j < columns; j++) whole.set(rows + j, j, Math.sqrt(damping));
  const solved = new QrDecomposition(whole).solve(target);
  return Float64Array.from({ length: columns }, (_, j) => solved.get(j, 0) / scale[j]);
}

/** By how much the rows promise that a step lowers the sum. */
function promise(left: Matrix, right: Float64Array, step: Float64Array): number {
  let gain = 0;
  for (let i = 0; i < left.rows; i++) {
    let moved = 0;
    for (let j = 0; j < left.columns; j++) moved += left.get(i, j) * step[j];
    gain += moved * (right[i] - moved / 2);
  }
  return gain;
}

/** What the sum comes to, by derivatives, after the step that they ask for; Infinity where there is no sum. */
export function promisedAt(
  problem: Problem,
  at: Float64Array,
  predicted: Float64Array,
  jacobian: Matrix,
): number {
  const { left, right } = rowsOf(problem, at, predicted, jacobian);
  const step = stepOf(left, right, new Float64Array(problem.size).fill(1), 1e-3);
  return sumAt(problem, at, predicted) - promise(left, right, step);
}

/** Derivatives that also hold along a step that was made, changed as little as can be. */
function carriedOn(jacobian: Matrix, step: Float64Array, was: Float64Array, is: Float64Array): Matrix {
  const square = step.reduce((sum, each) => sum + each * each, 0);
  const next = jacobian.clone();
  for (let i = 0; i < is.length; i++) {
    let expected = 0;
    for (let j = 0; j < step.length; j++) expected += jacobian.get(i, j) * step[j];
    const missing = (is[i] - was[i] - expected) / square;
    for (let j = 0; j < step.length; j++) next.set(i, j, next.get(i, j) + missing * step[j]);
  }
  return next;
}

/** Least gain ratio of a step by which carried derivatives prove themselves. */
const goodStep = 0.25;

/** Poor steps in a row, refused ones among them, each of which tells carried derivatives of the model, before they are taken anew. */
const forgiven = 2;

/**
 * Lowest sum of losses by Levenberg and Marquardt's method: damped Gauss-Newton steps, columns scaled by the longest
 * that they were (J. J. More, in Numerical Analysis, Lecture Notes in Mathematics 630, 1978), damping by the gain
 * ratio (H. B. Nielsen, IMM-REP-1999-05).
 *
 * @param start where to begin; its prediction must exist
 * @throws RangeError where the model gives no prediction at the start
 */
export function* minimise(
  problem: Problem,
  start: Float64Array,
  options: MinimiseOptions = {},
): Asking<Minimum> {
  const { most = 100, carryOn = false, proofs = Infinity } = options;
  let at = Float64Array.from(start);
  const [first] = options.predicted === undefined ? yield* ask(problem, [at]) : [options.predicted];
  let value = sumAt(problem, at, first);
  if (first === undefined || value === Infinity) throw new RangeError('no prediction at the start');
  let predicted = first;
  let damping = 1e-3;
  let growth = 2;
  const scale = new Float64Array(problem.size);
  let fresh = options.jacobian === undefined;
  let steps = fresh ? 1 : 0;
  let jacobian = options.jacobian ?? (yield* problem.jacobian(at, predicted));
  let poor = 0;
  let proven = 0;
  // Of each try since derivatives were last given: the sum before it, and how many derivatives were taken until then.
  const tries: { readonly sum: number; readonly steps: number }[] = [];
  const creeps = (): boolean => {
    const { tries: count, gain } = options.patience ?? { tries: Infinity, gain: 0 };
    if (tries.length < count) return false;
    const before = tries[tries.length - count];
    return before.sum - value < gain && before.steps < steps;
  };
  for (;;) {
    const { left, right } = rowsOf(problem, at, predicted, jacobian);
    for (let j = 0; j < problem.size; j++) scale[j] = Math.max(scale[j], left.getColumnVector(j).norm());
    const step = stepOf(
      left,
      right,
      scale.map((each) => (each > 0 ? each : 1)),
      damping,
    );
    const promised = promise(left, right, step);
    const next = at.map((each, j) => each + step[j]);
    const still = next.every((each, j) => Math.abs(each - at[j]) <= 1e-14 * Math.abs(at[j]));
    const done = (converged: boolean): Minimum => ({ at, predicted, jacobian, value, converged, steps });
    let anew: boolean;
    if (creeps()) return done(true);
    const { sum: known, within } = options.known ?? { sum: -Infinity, within: 0 };
    if (value - known < within && promised < within) return done(true);
    tries.push({ sum: value, steps });
    if (still || promised <= (options.gain ?? 1e-14 * Math.abs(value))) {
      if (fresh || proven++ >= proofs) return done(true);
      anew = true;
    } else {
      const [there] = yield* ask(problem, [next]);
      const sum = sumAt(problem, next, there);
      const carried =
        !carryOn || there === undefined ? undefined : carriedOn(jacobian, step, predicted, there);
      if (there !== undefined && sum < value) {
        const ratio = (value - sum) / promised;
        damping *= Math.max(1 / 3, 1 - wholePower(2 * ratio - 1, 3));
        growth = 2;
        [at, predicted, value] = [next, there, sum];
        if (ratio > goodStep) poor = 0;
        anew = carried === undefined || (ratio <= goodStep && ++poor > forgiven);
        fresh = false;
      } else {
        damping *= growth;
        growth *= 2;
        if (damping > 1e30) return done(false);
        anew = !fresh && ++poor > (carried === undefined ? 0 : forgiven);
      }
      if (anew && steps >= most) return done(false);
      if (carried !== undefined) jacobian = carried;
    }
    if (!anew) continue;
    jacobian = yield* problem.jacobian(at, predicted);
    [fresh, poor] = [true, 0];
    steps += 1;
  }
}

/**
 * Derivatives of predictions by differences: a row a prediction, a column a number. Where the model fails on one side
 * the other is taken.
 *
 * @param both whether differences are central (twice the work, the error of the square of the step)
 * @throws RangeError where the model fails on both sides of a number
 */
export function* differences(
  of: Predicting,
  at: Float64Array,
  predicted: Float64Array,
  step: (j: number) => number,
  both: boolean,
): Asking<Matrix> {
  const moved = (j: number, by: number): Float64Array => at.map((each, k) => (k === j ? each + by : each));
  const numbers = [...at.keys()];
  const ups = yield* ask(
    of,
    numbers.map((j) => moved(j, step(j))),
  );
  const down = numbers.filter((j) => both || ups[j] === undefined);
  const found =
    down.length === 0
      ? []
      : yield* ask(
          of,
          down.map((j) => moved(j, -step(j))),
        );
  const downs = new Map(down.map((j, i) => [j, found[i]]));
  const jacobian = Matrix.zeros(predicted.length, at.length);
  for (const j of numbers) {
    const [up, below, h] = [ups[j], downs.get(j), step(j)];
    if (up === undefined && below === undefined)
      throw new RangeError(`no prediction on either side of number ${j}`);
    const width = (up === undefined ? 0 : h) + (below === undefined ? 0 : h);
    for (let i = 0; i < predicted.length; i++) {
      jacobian.set(i, j, ((up ?? predicted)[i] - (below ?? predicted)[i]) / width);
    }
  }
  return jacobian;
}

/**
 * Standard deviates spread over their priors: each number takes one draw from each of `count` slices of equal share, in
 * random order (Latin hypercube). The same for the same seed.
 */
function spreadStarts(count: number, size: number, seed: number): readonly Float64Array[] {
  const random = createRandom(seed);
  const starts = Array.from({ length: count }, () => new Float64Array(size));
  for (let j = 0; j < size; j++) {
    const slices = Array.from({ length: count }, (_, i) => i);
    for (let i = count - 1; i > 0; i--) {
      const k = Math.floor(random() * (i + 1));
      [slices[i], slices[k]] = [slices[k], slices[i]];
    }
    slices.forEach((slice, i) => {
      starts[i][j] = normalQuantile(Math.min(Math.max((slice + random()) / count, 0.01), 0.99));
    });
  }
  return starts;
}

/** How often more places are looked at than searched from. */
const looked = 3;

/** The best of some places spread over the priors, in standard deviates; fewer where so many have no prediction. */
export function* bestPlaces(problem: Problem, count: number, seed: number): Asking<readonly Float64Array[]> {
  if (count <= 0) return [];
  const spread = spreadStarts(looked * count, problem.size, seed);
  const predicted = yield* ask(problem, spread);
  return spread
    .map((at, i) => ({ at, cost: sumAt(problem, at, predicted[i]) }))
    .filter(({ cost }) => cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, count)
    .map(({ at }) => at);
}

/**
 * Minima of a problem in standard deviates: from their middle, and from the best of some spread starts; the first is
 * that from the middle.
 * @param further how many starts besides the middle, if so many places have a prediction
 * @throws RangeError where the model gives no prediction at the middle
 */
export function* minimaFrom(
  problem: Problem,
  further: number,
  seed: number,
  options: MinimiseOptions,
): Asking<readonly Minimum[]> {
  const starts = [new Float64Array(problem.size), ...(yield* bestPlaces(problem, further, seed))];
  const minima: Minimum[] = [];
  for (const start of starts) minima.push(yield* minimise(problem, start, options));
  return minima;
}

/** Steps of the differences, in standard deviations of the priors: fine beside kits, coarse beside the runs' tolerance. */
export const differenceStep = 0.1;

/**
 * A step that promises less than this of the log posterior is not worth a derivative: it moves no number by more than 0.3 of
 * its standard error (half the square of the move, in errors), and runs at their tolerance are off by 0.02.
 */
export const enough = 0.05;

/** Who predicts the readings of a problem. */
export function predictingOf(problem: FitProblem): Predicting {
  const sought = soughtOf(problem.observations);
  return { predict: (at) => problem.predict(at, sought), part: partOf(problem) };
}

/** The search's problem: predictions of every reading and what they cost, each as it counts beside its neighbours. */
export function searchProblem(problem: FitProblem, counting: readonly Counting[]): Problem {
  const errors = problem.observations.map(({ reading }) => problem.errorOf(reading.reads));
  const of = predictingOf(problem);
  return {
    ...of,
    size: problem.free.length,
    loss: (i, predicted) => countedLoss(problem.observations[i], predicted, errors[i], counting[i]),
    jacobian: (at, predicted) => differences(of, at, predicted, () => differenceStep, false),
    prior: true,
  };
}
