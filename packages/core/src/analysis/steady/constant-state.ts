import { Matrix } from 'ml-matrix';
import type { Model } from '../../model/model.js';
import type { Component } from '../../processes/components.js';
import { absoluteTolerances } from '../../run/tolerances.js';
import type { RateSystem } from '../../solve/contract.js';
import { rosenbrock } from '../../solve/rosenbrock.js';
import { type Held, heldSystem, holdDrifting, statesOf } from './held.js';
import { type Mode, modesOf } from './modes.js';
import { newton } from './newton.js';
import type { EvenTerm } from './spread-actions.js';

/** How the states change at a point, and how that depends on them. */
interface Slope {
  /** dy/dt of every state, 0 where held. */
  readonly f: Float64Array;
  /** Its partials by every state. */
  readonly jacobian: Matrix;
}

/** Opens the slope Sᵀ r of a system and its Jacobian Sᵀ ∂r/∂y, at time 0. */
function openSlope(system: RateSystem): (y: Float64Array) => Slope {
  const { stoichiometry, dependence } = system;
  const r = new Float64Array(system.rates);
  const rt = new Float64Array(system.rates);
  const dr = new Float64Array(dependence.column.length);
  return (y) => {
    const f = new Float64Array(system.states);
    const jacobian = Matrix.zeros(system.states, system.states);
    system.evaluate(0, y, r);
    system.differentiate(0, y, dr, rt);
    for (let k = 0; k < system.rates; k++) {
      for (let s = stoichiometry.start[k]; s < stoichiometry.start[k + 1]; s++) {
        const row = stoichiometry.column[s];
        const coefficient = stoichiometry.value[s];
        f[row] += coefficient * r[k];
        for (let p = dependence.start[k]; p < dependence.start[k + 1]; p++) {
          const column = dependence.column[p];
          jacobian.set(row, column, jacobian.get(row, column) + coefficient * dr[p]);
        }
      }
    }
    return { f, jacobian };
  };
}

/** A state that does not change, with what was held to get there. */
export interface ConstantState {
  readonly y: Float64Array;
  readonly held: readonly Held[];
  readonly free: readonly number[];
  /** Jacobian of the free states, 1/d. */
  readonly jacobian: Matrix;
  readonly modes: readonly Mode[];
  /** Days marched before Newton was in reach, and the Newton steps from there. */
  readonly marched: number;
  readonly steps: number;
  /** The last Newton step, as a share of each state at most. */
  readonly lastStep: number;
}

/** No state was found that lasts, though all that drifts was held. */
export class NoSteadyStateError extends Error {
  override readonly name = 'NoSteadyStateError';
}

/** Ends of the march, d: Newton is tried at each. */
const waypoints = [0, 3, 30, 100, 300, 1000, 3000, 10_000, 30_000, 100_000];
/** Newton's answer is where the march leads when every state of the march is within this share of it. */
const NEAR = 0.1;
/** Day of the march on which is seen what drifts: years on, before one drift has brought about others. */
const DRIFT_DAY = 1000;
/** A component drifts when all of it then changes by more than this share a day. */
const DRIFTS = 1e-5;
/** A mode this slow, d, is one that never settles. */
const NEVER = 1e8;
const MARCH_TOLERANCE = 1e-6;
/** Components held one after another at most. */
const MOST_HELD = 12;

interface Attempt {
  readonly found?: Omit<ConstantState, 'held'>;
  /** Where the march was on the day on which drifts are looked at, and where it ended. */
  readonly early: Float64Array;
  readonly y: Float64Array;
  readonly marched: number;
}

interface Task {
  readonly model: Model;
  readonly system: RateSystem;
  readonly even: readonly EvenTerm[];
}

const mayBeNegative = (model: Model) => (state: number) =>
  model.layout.states[state].component === 'alkalinity';

/** The largest distance between two states, in the larger of what counts as one and the value. */
function distance(a: Float64Array, b: Float64Array, scale: Float64Array): number {
  return a.reduce(
    (most, value, i) =>
      Math.max(most, Math.abs(value - b[i]) / Math.max(scale[i], Math.abs(b[i]), Number.MIN_VALUE)),
    0,
  );
}

/** Modes of the free states of a slope. */
function modesAt(model: Model, slope: Slope, free: readonly number[], scale: Float64Array): readonly Mode[] {
  return modesOf(
    slope.jacobian.selection([...free], [...free]),
    free.map((state) => scale[state]),
    free.map((state) => model.layout.states[state]),
  );
}

/** Marches and tries Newton at each waypoint, until its answer is where the march leads. */
function attempt({ model, system, even }: Task, from: Float64Array, held: ReadonlySet<number>): Attempt {
  const reduced = heldSystem(system, held, even);
  const slopeAt = openSlope(reduced);
  const scale = absoluteTolerances(model, 1);
  const free = freeOf(model, held);
  const absolute = absoluteTolerances(model, MARCH_TOLERANCE);
  const march = rosenbrock(reduced, { relative: MARCH_TOLERANCE, absolute });
  const x = new Float64Array(reduced.rates);
  const y = Float64Array.from(from);
  let early = y;
  let marched = 0;
  for (const day of waypoints) {
    if (day > marched && march.advance(0, day - marched, y, x).kind !== 'done') break;
    marched = day;
    if (day <= DRIFT_DAY) early = Float64Array.from(y);
    const ending = newton(y, {
      free,
      scale,
      mayBeNegative: mayBeNegative(model),
      evaluate(at) {
        const { f, jacobian } = slopeAt(at);
        const residual = Float64Array.from(free, (state) => f[state]);
        return { residual, matrix: jacobian.selection([...free], [...free]) };
      },
    });
    if (ending.kind !== 'found' || distance(y, ending.y, scale) > NEAR) continue;
    if (free.some((s) => !mayBeNegative(model)(s) && ending.y[s] < -1e-9 * scale[s])) continue;
    const slope = slopeAt(ending.y);
    const modes = modesAt(model, slope, free, scale);
    if (modes.some(({ time }) => Math.abs(time) > NEVER)) continue;
    // Only at the end of the march is a state believed that small changes would leave.
    if (modes.some(({ time }) => time < 0) && day < waypoints[waypoints.length - 1]) continue;
    const jacobian = slope.jacobian.selection([...free], [...free]);
    const { steps, lastStep } = ending;
    return { found: { y: ending.y, free, jacobian, modes, marched, steps, lastStep }, early, y, marched };
  }
  return { early, y, marched };
}

/** A component that does not settle, a state of it, and what all of it gains per day. */
interface Drift {
  readonly component: Component;
  readonly state: number;
  readonly drift: number;
}

const freeOf = (model: Model, held: ReadonlySet<number>): readonly number[] =>
  model.layout.states.flatMap((_, state) => (held.has(state) ? [] : [state]));

/** The component that drifts most at a state of the march. */
function worstDrift(
  { model, system, even }: Task,
  y: Float64Array,
  held: ReadonlySet<number>,
): Drift | undefined {
  const { f } = openSlope(heldSystem(system, held, even))(y);
  const scale = absoluteTolerances(model, 1);
  const free = freeOf(model, held);
  const components = [...new Set(free.map((state) => model.layout.states[state].component))];
  const drifts = components.map((component) => {
    const states = statesOf(model, component).filter((state) => !held.has(state));
    const drift = states.reduce((sum, state) => sum + f[state], 0);
    const whole = states.reduce((sum, state) => sum + Math.abs(y[state]) + scale[state], 0);
    const state = states.reduce((a, b) => (Math.abs(f[b]) > Math.abs(f[a]) ? b : a));
    return { component, state, drift, share: Math.abs(drift) / whole };
  });
  const worst = drifts.reduce((a, b) => (b.share > a.share ? b : a));
  return worst.share > DRIFTS ? worst : undefined;
}

/** Nothing drifts, but something may be anything: what the mode that never dies is made of. */
function anyValue(
  { model, system, even }: Task,
  y: Float64Array,
  held: ReadonlySet<number>,
): Drift | undefined {
  const slope = openSlope(heldSystem(system, held, even))(y);
  const modes = modesAt(model, slope, freeOf(model, held), absoluteTolerances(model, 1));
  const still = modes.find(({ time }) => Math.abs(time) > NEVER);
  if (still === undefined) return undefined;
  const [{ component }] = still.parts;
  const state = statesOf(model, component).filter((each) => !held.has(each))[0];
  return { component, state, drift: 0 };
}

/** What all of a held component would gain per day at a state. */
function driftOf({ model, system, even }: Task, y: Float64Array, component: string): number {
  const { f } = openSlope(heldSystem(system, new Set(), even))(y);
  return statesOf(model, component).reduce((sum, state) => sum + f[state], 0);
}

/**
 * The state at which nothing that can settle changes, reached from a start: by a march as far as need be, then by
 * Newton's method with the Jacobian of the model. What never settles is held at its value at the start, one
 * component after another; what is neither brought in nor taken out, at the value that the march led to.
 * @throws NoSteadyStateError when nothing more can be held and still none is found
 */
export function constantState(task: Task, start: Float64Array, given: readonly Held[]): ConstantState {
  const held = [...given];
  let from = start;
  for (let tries = 0; tries <= MOST_HELD; tries++) {
    const states = new Set(held.flatMap((each) => each.states));
    const { found, early, y, marched } = attempt(task, from, states);
    if (found !== undefined) {
      const withDrifts = held.map((each) =>
        given.includes(each) && each.drift === undefined
          ? each
          : { ...each, drift: driftOf(task, found.y, each.component) },
      );
      return { ...found, held: withDrifts };
    }
    const worst = worstDrift(task, early, states) ?? anyValue(task, y, states);
    if (worst === undefined) {
      throw new NoSteadyStateError(`no state that lasts was found in ${marched} days of simulation`);
    }
    held.push(holdDrifting(task.model, worst.component, worst.state, worst.drift));
    from = worst.drift === 0 ? y : start;
  }
  throw new NoSteadyStateError(
    `no state that lasts was found: ${held.map((each) => each.component).join(', ')} held`,
  );
}
