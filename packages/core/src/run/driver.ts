import { INSTANT } from '../base/instant.js';
import type { Model } from '../model/model.js';
import { openRates, type Rates } from '../model/rates.js';
import { byKind } from '../scenario/action-kinds.js';
import type { Action, TimedAction } from '../scenario/scenario.js';
import type { Ending, Integrator, IntegratorFactory, Tolerance } from '../solve/contract.js';
import { rosenbrock } from '../solve/rosenbrock.js';
import { closeTimes, disturbing, lookAt } from './close-look.js';
import { perform } from './actions.js';
import { openControls } from './controls.js';
import { openFishWatch, type FishWatch } from './fish-watch.js';
import type { WaterEvent } from './hydraulics.js';
import { watchDosers } from './dosers.js';
import { harvestRipe } from './plants.js';
import { adviceFor, type Outcome, type Sample } from './run.js';
import type { ResumableRun, RunParts, RunRecord, RunState } from './run-state.js';
import { freshBuffer, outputTimes, type SampleBuffer } from './sample-buffer.js';
import { Sampler } from './sampler.js';
import { rememberedIn, savedMorning } from './saved.js';
import { Segments } from './segments.js';
import { openParts, startState } from './start.js';
import { absoluteTolerances } from './tolerances.js';

/** How a run is made. */
export interface SimulateOptions {
  /** Absent: RODAS, a Rosenbrock method. A second one, that shares nothing with it, is `odex` of `@leat/core/odex`. */
  readonly integrator?: IntegratorFactory;
  /** Relative tolerance; default 1e-5: no series of the demo year then is off by more than about 1e-4. */
  readonly tolerance?: number;
  /** Called at each day boundary with the number of the `day`, from 0, for a progress bar. */
  readonly onDay?: (day: number) => void;
  /** Where the samples are kept; default: in arrays of their own. */
  readonly buffer?: SampleBuffer;
}

/** Makes the integrator of a run from its rates, whose regime is that of the segment to come, and its tolerance. */
export type OpenIntegrator = (rates: Rates, tolerance: Tolerance) => Integrator;

/** Marks of the water in one day that count as chattering. */
const CHATTER = 2000;

const waterWords: Readonly<Record<WaterEvent['kind'], string>> = {
  'pump-trip': 'sucks air and stops: its vessel is down to the inlet',
  'pump-restart': 'runs again',
  dry: 'ran dry: it loses no more than flows in',
  wet: 'holds water again',
  'rain-tank-empty': 'has given its last water',
  'cap-reached': 'has given what its cap allows',
};

/** The integrator that options name. */
export function integratorOf({ integrator = rosenbrock }: SimulateOptions): OpenIntegrator {
  return ({ system }, tolerance) => integrator(system, tolerance);
}

/** Makes a run, one segment of constant forcing after another. All that changes in it is in `state`. */
export class Driver {
  private readonly parts: RunParts;
  private readonly segments: Segments;
  private readonly sampler: Sampler;
  private readonly followControls: (time: number) => boolean;
  private readonly fishWatch: FishWatch;
  private readonly integrator: Integrator;
  private readonly tolerance: Tolerance;
  /** Actions in the order of the run. */
  private readonly actions: TimedAction[];
  private readonly outputs: readonly number[];

  /**
   * @param from goes on from the state of another run of this model and these options, between two segments, in
   *   place of `start`; it is changed, so give a copy where it is still wanted
   */
  constructor(
    private readonly model: Model,
    private readonly options: SimulateOptions,
    openIntegrator: OpenIntegrator,
    from?: RunState,
  ) {
    const { scenario } = model;
    const { tolerance = 1e-5, buffer = freshBuffer } = options;
    const rates = openRates(model);
    this.tolerance = { relative: tolerance, absolute: absoluteTolerances(model, tolerance) };
    this.integrator = openIntegrator(rates, this.tolerance);
    const memory = remember(rates, this.integrator, from?.memory ?? rememberedIn(model, scenario.saved));
    this.parts = openParts(model, { ...(from ?? startState(model)), memory });
    const { crops, hydraulics, state } = this.parts;
    const { operation, day } = state;
    this.segments = new Segments({ model, regime: rates.regime, operation, crops, hydraulics, day });
    this.sampler = new Sampler(this.parts, buffer);
    this.followControls = openControls(this.parts);
    this.fishWatch = openFishWatch(this.parts);
    this.actions = [...scenario.actions].sort((a, b) => a.at - b.at || byKind(a.action, b.action));
    this.outputs = outputTimes(scenario.days, scenario.every, scenario.saved?.time);
    if (from !== undefined) this.segments.enter(state.time);
  }

  /** Where the run stands. Between two segments a structured clone of it is a moment to go on from. */
  get state(): RunState {
    return this.parts.state;
  }

  /** What the run has left behind since it was opened. */
  get record(): RunRecord {
    return this.parts.record;
  }

  /** Does what is due at the start, and takes the first samples. What came before it has been done. */
  start(): void {
    const { state, outputs, model } = this;
    const { time } = state;
    this.skipDone();
    this.begin(false, savedMorning(model) === undefined);
    while (state.nextOutput < outputs.length && outputs[state.nextOutput] <= time + INSTANT) {
      this.sampler.take(outputs[state.nextOutput], state.y, state.x, 0);
      state.nextOutput++;
    }
  }

  /** Runs to the end of the segment and does what is due there. Returns whether the run goes on. */
  advance(): boolean {
    const atMark = this.carry();
    if (this.isOver()) return false;
    this.begin(atMark);
    return !this.isOver();
  }

  /**
   * Runs to the end of the segment, or to a time where that comes first, and leaves what is due there to `begin`.
   * Returns whether the water came to a mark.
   */
  carry(until = Infinity): boolean {
    if (this.isOver()) return false;
    const { state } = this;
    const { hydraulics } = this.parts;
    const jump = Math.min(this.nextJump(), until);
    const mark = state.time + hydraulics.untilMark();
    const atMark = mark < jump;
    this.integrate(atMark ? mark : jump, atMark);
    return atMark;
  }

  /**
   * Does what is due between two segments and sets the regime of the next.
   * @param morning whether the morning of the day is still to be found, though no day begins
   */
  begin(atMark: boolean, morning = false): void {
    const { state, segments } = this;
    const told = this.record.events.length;
    const boundary = Math.abs(state.time - Math.round(state.time)) <= INSTANT;
    const jumped = boundary && this.beginDay();
    const { time } = state;
    const acted = this.act(time);
    if (boundary || acted) this.fishWatch.noted();
    const day = Math.floor(time + INSTANT);
    const salted = (boundary || acted || morning) && segments.morning(day, time, state.y);
    // After a true jump the old step is far too long: begin again with a small one.
    if (this.settle(time) || acted || jumped || salted) this.integrator.restart();
    this.lookAtEvents(told);
    if (atMark && ++state.marks > CHATTER) {
      state.outcome = { kind: 'chattering', time, advice: adviceFor('chattering') };
    }
  }

  /** Takes in an action to be done now, as if it had stood in the scenario, behind those of its instant and kind. */
  add(action: Action): void {
    this.skipDone();
    const { actions, state } = this;
    let place = state.nextAction;
    const before = ({ at, action: other }: TimedAction): boolean =>
      at <= state.time + INSTANT && byKind(other, action) <= 0;
    while (place < actions.length && before(actions[place])) place++;
    actions.splice(place, 0, { at: state.time, action });
  }

  /** Everything as it stands now. */
  look(): Sample {
    return this.sampler.look(this.state.time, this.state.y, this.state.x, 0);
  }

  /** The run up to where it stands. */
  finish(): ResumableRun {
    const { model, state, integrator, tolerance } = this;
    const { samples, between, postings, events, doses } = this.record;
    // What was reached when a run breaks off or is left is told, whatever time it was.
    if (samples[samples.length - 1].time < state.time) {
      this.sampler.take(state.time, state.y, state.x, 0);
    }
    return {
      model,
      outcome: state.outcome ?? { kind: 'done', time: this.isOver() ? model.scenario.days : state.time },
      samples,
      ...(between.length > 0 && { between }),
      postings,
      events,
      doses,
      ages: state.planted.map((planted) => state.time - planted),
      state,
      work: { ...integrator.work },
      integrator: integrator.name,
      tolerance: tolerance.relative,
    };
  }

  /** Whether the run has come to its end or has broken off. */
  isOver(): boolean {
    const { outcome, time } = this.state;
    return outcome !== undefined || time >= this.model.scenario.days - INSTANT;
  }

  /** Passes over the actions that came before now. */
  private skipDone(): void {
    const { state, actions } = this;
    while (state.nextAction < actions.length && actions[state.nextAction].at < state.time - INSTANT)
      state.nextAction++;
  }

  /** The next instant at which the forcing jumps. */
  private nextJump(): number {
    const { actions, segments } = this;
    const { time, nextAction } = this.state;
    const today = Math.floor(time + INSTANT);
    let next = Math.min(today + 1, this.model.scenario.days);
    if (nextAction < actions.length) next = Math.min(next, actions[nextAction].at);
    return Math.min(next, segments.nextSwitch(time));
  }

  /** Integrates to the end of the segment, with the samples within it and at its end. */
  private integrate(to: number, atMark: boolean): void {
    const { model, state, outputs, sampler, tolerance } = this;
    const { hydraulics } = this.parts;
    const from = state.time;
    const due: number[] = [];
    for (let next = state.nextOutput; next < outputs.length && outputs[next] < to - INSTANT; next++) {
      due.push(outputs[next]);
    }
    const isDue = (at: number): boolean => due.some((each) => Math.abs(each - at) <= INSTANT);
    const close = closeTimes(state.look, from, to).filter((at) => !isDue(at));
    const times = close.length === 0 ? due : [...due, ...close].sort((a, b) => a - b);
    const between = new Set(close);
    const take = (at: number, y: Float64Array, x: Float64Array): void => {
      sampler.take(at, y, x, at - from, between.has(at) ? 'between' : 'samples');
    };
    const ending: Ending =
      to > from ? this.integrator.advance(from, to, state.y, state.x, { times, take }) : { kind: 'done' };
    state.nextOutput += due.length;
    if (ending.kind !== 'done') {
      hydraulics.advance(ending.time - from);
      state.time = ending.time;
      state.outcome = this.brokenOff(ending);
      return;
    }
    hydraulics.advance(atMark ? hydraulics.untilMark() : to - from);
    state.time = to;
    const ill = belowZero(model, state.y, tolerance.absolute, to);
    if (ill !== undefined) state.outcome = ill;
    if (state.nextOutput < outputs.length && outputs[state.nextOutput] <= to + INSTANT) {
      sampler.take(outputs[state.nextOutput++], state.y, state.x, 0);
    }
  }

  /** Begins a day, but for its actions. Returns whether something was harvested, booked as dead or done by a rule. */
  private beginDay(): boolean {
    const { parts, state } = this;
    state.time = Math.round(state.time);
    state.marks = 0;
    parts.hydraulics.newDay(state.time);
    this.options.onDay?.(state.time);
    const harvested = harvestRipe(parts, state.time);
    watchDosers(parts, state.time);
    const cleared = this.fishWatch.told(state.time);
    return this.followControls(state.time) || harvested || cleared;
  }

  /** Does the actions that are due. Returns whether there were any. */
  private act(time: number): boolean {
    const { parts, state, actions } = this;
    const from = state.nextAction;
    const due = from < actions.length && actions[from].at <= time + INSTANT;
    if (due) this.fishWatch.told(time);
    this.lookBefore(time);
    while (state.nextAction < actions.length && actions[state.nextAction].at <= time + INSTANT) {
      const { action, cause } = actions[state.nextAction++];
      perform(parts, action, time, cause);
    }
    return state.nextAction > from;
  }

  /** Takes a sample before actions that will be looked at closely, unless the last is of the same time. */
  private lookBefore(time: number): void {
    const { state, actions } = this;
    for (let next = state.nextAction; next < actions.length && actions[next].at <= time + INSTANT; next++) {
      const { action } = actions[next];
      if (!disturbing.has(action.kind) || this.isSampled(time)) continue;
      this.sampler.take(time, state.y, state.x, 0, 'between');
    }
  }

  /** Looks closely at what happened since so many events; what no action did is sampled where it happened. */
  private lookAtEvents(told: number): void {
    const { state, record } = this;
    let close = false;
    for (const event of record.events.slice(told)) close = lookAt(state.look, event) || close;
    if (close && !this.isSampled(state.time)) this.sampler.take(state.time, state.y, state.x, 0, 'between');
  }

  /** Whether there is a sample of a time, or will be: the first of a run is taken after what is done there. */
  private isSampled(time: number): boolean {
    const { record, state, outputs } = this;
    const due = state.nextOutput < outputs.length ? outputs[state.nextOutput] : Infinity;
    const last = [record.samples.at(-1)?.time, record.between.at(-1)?.time, due];
    return last.some((at) => at !== undefined && Math.abs(at - time) <= INSTANT);
  }

  /** Sets the regime of the segment that starts at a time; true when the water did something. */
  private settle(time: number): boolean {
    const events = this.segments.settle(time);
    for (const { kind, place } of events) this.parts.ledger.say(time, kind, place, waterWords[kind]);
    // A source that gives no more changes the flow; only a pump or a dry vessel is a jump.
    return events.some(({ kind }) => kind !== 'cap-reached' && kind !== 'rain-tank-empty');
  }

  /** How a run ends where the integrator gave up. */
  private brokenOff({ kind, time, worst }: Exclude<Ending, { kind: 'done' }>): Outcome {
    const state = worst >= 0 ? this.model.layout.states[worst] : undefined;
    return {
      kind,
      time,
      ...(state && { worst: `${state.component}@${state.place}` }),
      advice: adviceFor(kind),
    };
  }
}

/** What the numerical methods remember, changed by them in place; set to what those of another run remembered. */
function remember(
  { memory: pH }: Rates,
  { memory: steps }: Integrator,
  from: RunState['memory'] | undefined,
): RunState['memory'] {
  if (from !== undefined) {
    pH.hydrogen.set(from.pH.hydrogen);
    pH.origin.set(from.pH.origin);
    pH.slope.set(from.pH.slope);
    if (steps !== undefined && from.steps !== undefined) Object.assign(steps, from.steps);
  }
  return { pH, ...(steps && { steps }) };
}

/** A state more than ten tolerances below zero is an error; alkalinity may truly be negative. */
function belowZero(model: Model, y: Float64Array, absolute: Float64Array, time: number): Outcome | undefined {
  for (let s = 0; s < y.length; s++) {
    const { component, place } = model.layout.states[s];
    if (component === 'alkalinity' || !(y[s] < -10 * absolute[s])) continue;
    return {
      kind: 'negative-state',
      time,
      worst: `${component}@${place}`,
      advice: adviceFor('negative-state'),
    };
  }
  return undefined;
}
