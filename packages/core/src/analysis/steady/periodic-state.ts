import { powerOfTwo } from '../../base/elementary.js';
import { inverse, Matrix } from 'ml-matrix';
import type { Model } from '../../model/model.js';
import { absoluteTolerances } from '../../run/tolerances.js';
import type { RateSystem } from '../../solve/contract.js';
import { rosenbrock } from '../../solve/rosenbrock.js';
import { NoSteadyStateError, type ConstantState } from './constant-state.js';
import { enter, type Cycle } from './cycle.js';

/** Accuracy of a pass over the cycle. */
const PASS_TOLERANCE = 1e-10;
/** The search ends when a step is under this share of every state. */
const SMALL = 1e-9;
const MOST_PASSES = 200;
/** Halvings of the cycle in the exponential of the Jacobian. */
const HALVINGS = 8;
const TOWARDS_ZERO = 0.9;
const AS_GOOD_AS_NONE = 1e-3;

/** A state that comes back after a cycle. */
export interface PeriodicState {
  readonly y: Float64Array;
  readonly passes: number;
  /** The largest change over one cycle, as a share of each state. */
  readonly residual: number;
}

/** Takes y over one cycle in place. Throws NoSteadyStateError where the integration breaks off. */
function openPass(model: Model, cycle: Cycle, system: RateSystem): (y: Float64Array) => void {
  const absolute = absoluteTolerances(model, PASS_TOLERANCE);
  const integrator = rosenbrock(system, { relative: PASS_TOLERANCE, absolute });
  const x = new Float64Array(system.rates);
  return (y) => {
    for (const segment of cycle.segments) {
      enter(cycle.regime, segment);
      integrator.restart();
      const ending = integrator.advance(segment.from, segment.to, y, x);
      if (ending.kind !== 'done')
        throw new NoSteadyStateError(`a pass over the cycle broke off: ${ending.kind}`);
    }
  };
}

/** exp(J t) by backward Euler steps, which the slow and the infinitely fast both stand. */
function exponential(jacobian: Matrix, time: number): Matrix {
  const size = jacobian.rows;
  let result = inverse(Matrix.eye(size).sub(jacobian.clone().mul(time / powerOfTwo(HALVINGS))));
  for (let i = 0; i < HALVINGS; i++) result = result.mmul(result);
  return result;
}

/**
 * The state that a cycle brings back to itself, from the state that its mean forcing would hold. Broyden's method
 * on y - pass(y), begun with I - exp(J P) of the mean forcing for its Jacobian: the part that varies within the
 * cycle is learnt from the passes. Source [M]: Broyden 1965, Math. Comp. 19:577.
 * @throws NoSteadyStateError when it does not converge
 */
export function periodicState(
  model: Model,
  cycle: Cycle,
  system: RateSystem,
  mean: ConstantState,
): PeriodicState {
  const { free, jacobian } = mean;
  const pass = openPass(model, cycle, system);
  const scale = absoluteTolerances(model, 1);
  const unit = free.map((state) => Math.max(scale[state], Math.abs(mean.y[state])));
  const size = free.length;
  const scaled = jacobian
    .clone()
    .mulRowVector(unit)
    .mulColumnVector(unit.map((value) => 1 / value));
  const h = inverse(Matrix.eye(size).sub(exponential(scaled, cycle.period)));
  const y = Float64Array.from(mean.y);
  /** What the cycle adds, in units. */
  const gain = (at: Float64Array): Matrix => {
    const after = Float64Array.from(at);
    pass(after);
    return Matrix.columnVector(free.map((state, i) => (after[state] - at[state]) / unit[i]));
  };
  const largest = (column: Matrix): number => Math.max(0, ...column.to1DArray().map(Math.abs));
  let g = gain(y);
  for (let passes = 1; passes <= MOST_PASSES; passes++) {
    const step = h.mmul(g);
    const size1 = largest(step);
    if (!Number.isFinite(size1)) break;
    if (size1 <= SMALL) return { y, passes, residual: largest(g) };
    let share = 1;
    free.forEach((state, i) => {
      const down = -step.get(i, 0) * unit[i];
      if (model.layout.states[state].component === 'alkalinity' || down <= 0) return;
      if (y[state] <= AS_GOOD_AS_NONE * scale[state]) return;
      share = Math.min(share, (TOWARDS_ZERO * y[state]) / down);
    });
    step.mul(share);
    free.forEach((state, i) => (y[state] += step.get(i, 0) * unit[i]));
    const next = gain(y);
    // y - pass(y) changed by g - next over this step.
    const learnt = h.mmul(g.clone().sub(next));
    const along = step.transpose().mmul(learnt).get(0, 0);
    if (along !== 0) {
      const row = step.transpose().mmul(h);
      h.add(step.clone().sub(learnt).mmul(row).div(along));
    }
    g = next;
  }
  throw new NoSteadyStateError(`no cycle that comes back was found in ${MOST_PASSES} passes`);
}
