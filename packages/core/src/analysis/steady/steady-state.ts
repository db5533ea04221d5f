import { calendarDays } from '../../base/calendar.js';
import { InputError } from '../../base/faults.js';
import { sum } from '../../base/sum.js';
import { parseQuantity } from '../../base/units.js';
import { compileChecked } from '../../model/compile.js';
import type { Model, Regime } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import type { Action, Scenario } from '../../scenario/scenario.js';
import { constantState, NoSteadyStateError } from './constant-state.js';
import { type Cycle, enter, ionsIn, openCycle, setIons } from './cycle.js';
import { type WaterComponent, waterComponents } from '../../processes/components.js';
import { type Held, heldSystem, holdRequested, holdSlow, limeHeld, livingHeld } from './held.js';
import type { Mode } from './modes.js';
import { periodicState } from './periodic-state.js';
import {
  drainedWater,
  type EvenTerm,
  evenTerms,
  type RepeatedAction,
  spreadActions,
} from './spread-actions.js';
import { steadyCourse } from './steady-course.js';

/** How a steady state is sought. */
export interface SteadyOptions {
  /** Day of the run whose weather is repeated; default 0. */
  readonly day?: number;
  /** Crops held at the mean of their cycle from planting to harvest (default), or as they stand at the start. */
  readonly crops?: 'mean' | 'as-at-start';
  /** Components of the water held in the reservoir at their value at the start. */
  readonly hold?: readonly string[];
  /** d: a component of the water that takes longer to settle (95 % back) is held at its start; default: all settle. */
  readonly patience?: number;
}

/** A state that lasts, or a cycle that repeats, under the forcing of one day. */
export interface SteadyState {
  readonly kind: 'constant' | 'periodic';
  /** d. */
  readonly period: number;
  /** Day whose weather is repeated. */
  readonly day: number;
  /** A month of it, as a run would tell it: hourly where it is periodic, daily where it is constant. */
  readonly course: Run;
  /** What is held because it does not settle. */
  readonly held: readonly Held[];
  /** Time constants, the slowest first; of the mean forcing where the state is periodic. */
  readonly modes: readonly Mode[];
  /** Whether small changes die away. */
  readonly stable: boolean;
  /** Actions that are spread evenly, and kinds of those that are left out. */
  readonly spread: readonly RepeatedAction[];
  readonly leftOut: readonly Action['kind'][];
  /** What the water did until it settled, such as a pump that sucked air. */
  readonly water: readonly { readonly kind: string; readonly place: string }[];
  /** Days of march before Newton was in reach. */
  readonly marched: number;
  /** Newton steps. */
  readonly steps: number;
  /** Passes over the cycle; 0 where the state is constant. */
  readonly passes: number;
  /** Largest share of a state by which it still changes: the last Newton step, or over one cycle. */
  readonly residual: number;
}

/** A place for lime where none was laid in. */
const noLime = { kind: 'powder', mass: 0 };

/** The scenario without actions and rules; drained water leaves steadily, and what may hold lime still may. */
function still({ scenario, layout }: Model, drained: ReadonlyMap<string, number>): Scenario {
  return {
    ...scenario,
    actions: [],
    rules: [],
    vessels: scenario.vessels.map((vessel, index) => ({
      ...vessel,
      ...(vessel.lime === undefined && layout.calcite[index] >= 0 && { lime: noLime }),
      exchange: vessel.exchange + (drained.get(vessel.name) ?? 0),
    })),
  };
}

/** Puts the mean of a cycle into force: flows, volumes and coefficients, each by its time. */
function enterMean(regime: Regime, { segments, period }: Cycle): void {
  const [first] = segments;
  const mean = (of: (segment: Cycle['segments'][number]) => ArrayLike<number>): Float64Array => {
    const sums = new Float64Array(of(first).length);
    for (const segment of segments) {
      const share = (segment.to - segment.from) / period;
      const values = of(segment);
      for (let i = 0; i < sums.length; i++) sums[i] += share * values[i];
    }
    return sums;
  };
  enter(regime, {
    ...first,
    flow: mean(({ flow }) => flow),
    volume: mean(({ volume, slope, from, to }) =>
      volume.map((value, vessel) => value + (slope[vessel] * (to - from)) / 2),
    ),
    slope: new Float64Array(first.slope.length),
    coefficients: first.coefficients.map((_, j) => mean(({ coefficients }) => coefficients[j])),
  });
}

/** Ionic strengths are settled when none moves by more than this share; so often at most are they found anew. */
const IONS_SETTLED = 1e-7;
const MOST_ROUNDS = 20;

/** A cycle of which the lasting state is sought. */
interface Sought {
  readonly model: Model;
  readonly even: readonly EvenTerm[];
  readonly cycle: Cycle;
  readonly given: readonly Held[];
}

/** Largest share of the ionic strengths found by which those that were set are off. */
const largestShare = (found: Float64Array, off: Float64Array): number =>
  found.reduce((most, value, i) => Math.max(most, Math.abs(off[i]) / Math.max(value, Number.MIN_VALUE)), 0);

/**
 * Share of the way to the ionic strengths of the state just found that the next round goes, by how far off this round and the last
 * one were (relaxation by Aitken's rule for vectors, Irons & Tuck 1969): where a state answers the ions that are set by others that lie
 * beyond, whole ways go to and fro.
 */
function shareOfWay(last: number, before: Float64Array, off: Float64Array): number {
  const change = off.map((value, i) => value - before[i]);
  const square = sum(change.map((value) => value * value));
  return square > 0 ? (-last * sum(change.map((value, i) => value * before[i]))) / square : last;
}

/**
 * The lasting state of a cycle. A run holds ionic strength through each day; here it is that of the state itself,
 * found in rounds: each sets the constants of acids and bases by the states of those before.
 * @throws NoSteadyStateError when no such state is found
 */
function settled({ model, even, cycle, given }: Sought) {
  let { start } = cycle;
  let share = 1;
  let before: Float64Array | undefined;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (cycle.constant) enter(cycle.regime, cycle.segments[0]);
    else enterMean(cycle.regime, cycle);
    const constant = constantState({ model, system: cycle.system, even }, start, given);
    const states = new Set(constant.held.flatMap((each) => each.states));
    const system = heldSystem(cycle.system, states, even);
    const repeated = cycle.constant ? undefined : periodicState(model, cycle, system, constant);
    const y = repeated?.y ?? constant.y;
    const found = ionsIn(model, cycle, y);
    const off = found.map((value, vessel) => value - cycle.ionic[vessel]);
    const settles = largestShare(found, off) < IONS_SETTLED;
    if (before !== undefined && !settles) share = shareOfWay(share, before, off);
    const next = cycle.ionic.map((value, vessel) => value + share * off[vessel]);
    // A share that would leave no ions says nothing: the whole way again.
    const whole = settles || next.some((value) => !(value > 0));
    setIons(model, cycle, whole ? found : next);
    if (settles) return { constant, repeated, system, y };
    if (whole) share = 1;
    before = off;
    start = withHeld(cycle.start, y, states);
  }
  throw new NoSteadyStateError(`ionic strengths did not settle in ${MOST_ROUNDS} rounds`);
}

/** A state to start from: one found before, with what is held as it was at the very start. */
function withHeld(start: Float64Array, found: Float64Array, held: ReadonlySet<number>): Float64Array {
  return found.map((value, state) => (held.has(state) ? start[state] : value));
}

/** Components of the water whose slowest mode takes longer to die away than is waited for, and how long, d. */
function tooSlow(
  modes: readonly Mode[],
  held: readonly Held[],
  patience: number,
): Map<WaterComponent, number> {
  const slow = new Map<WaterComponent, number>();
  for (const { parts, time, recovery } of modes) {
    const component = waterComponents.find((each) => each === parts.at(0)?.component);
    if (component === undefined || !(time > 0 && recovery > patience)) continue;
    if (!held.some((each) => each.component === component))
      slow.set(component, Math.max(recovery, slow.get(component) ?? 0));
  }
  return slow;
}

/** As `settled`, with what would settle too slowly held, and found anew until the rest settles in time. */
function settledWithin(
  sought: Omit<Sought, 'given'>,
  given: readonly Held[],
  patience: number,
): ReturnType<typeof settled> {
  const start = Float64Array.from(sought.cycle.start);
  let held = given;
  for (;;) {
    const found = settled({ ...sought, given: held });
    const slow = tooSlow(found.constant.modes, held, patience);
    if (slow.size === 0) return found;
    held = [...held, ...holdSlow(sought.model, slow)];
    sought.cycle.start.set(start);
    setIons(sought.model, sought.cycle, ionsIn(sought.model, sought.cycle, start));
  }
}

/**
 * The state that a system comes to, and keeps, under the weather of one day, with fish and crops held as they are
 * at the start. Doses, drainings and changes of water that repeat are spread evenly; other actions and rules are left
 * out. With timers, hours of feeding or rations of water that run out, the state is one that repeats.
 * @throws InputError when the water never settles, NoSteadyStateError when no such state is found
 */
export function steadyState(model: Model, options: SteadyOptions = {}): SteadyState {
  const day = options.day ?? 0;
  const { spread, leftOut } = spreadActions(model.scenario);
  const frozen = compileChecked(still(model, drainedWater(spread)), model.parameters, {
    ...(model.extension && { extension: model.extension }),
    // The rows were checked when the model was compiled.
    closureDraws: 0,
  });
  const even = evenTerms(spread, frozen);
  const cycle = openCycle(frozen, day, options.crops ?? 'mean');
  const given = [
    ...livingHeld(frozen),
    ...limeHeld(frozen, even),
    ...holdRequested(frozen, options.hold ?? []),
  ];
  const sought = { model: frozen, even, cycle };
  const { constant, repeated, system, y } = settledWithin(sought, given, options.patience ?? Infinity);
  return {
    kind: cycle.constant ? 'constant' : 'periodic',
    period: cycle.period,
    day,
    course: steadyCourse(frozen, cycle, system, y),
    held: constant.held,
    modes: constant.modes,
    stable: constant.modes.every(({ time }) => time > 0),
    spread,
    leftOut: leftOut,
    water: cycle.events,
    marched: constant.marched,
    steps: constant.steps,
    passes: repeated?.passes ?? 0,
    residual: repeated?.residual ?? constant.lastStep,
  };
}

/**
 * The whole day of a run that a text names: a time after the start such as `90 d`, or a date.
 * @param where what to name in a fault, such as an option
 * @throws InputError where it names no day, or one before the start
 */
export function dayOn(text: string, { startDate }: Pick<Scenario, 'startDate'>, where: string): number {
  const expected = 'a time after the start such as "30 d", or a date such as 2026-03-01';
  const fault = (problem: string): InputError =>
    new InputError([{ file: where, got: JSON.stringify(text), problem, expected }]);
  if (/^\d{4}-\d/.test(text)) {
    const date = calendarDays(text);
    if (date === undefined) throw fault('no such date');
    const day = Math.floor(date - (calendarDays(startDate) ?? Number.NaN));
    if (day < 0) throw fault(`before the start, ${startDate}`);
    return day;
  }
  const answer = parseQuantity(text, 'time');
  if ('problem' in answer) throw fault(answer.problem);
  return Math.floor(answer.value);
}
