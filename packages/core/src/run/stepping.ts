import { INSTANT } from '../base/instant.js';
import type { Model } from '../model/model.js';
import type { Action } from '../scenario/scenario.js';
import { Driver, integratorOf, type OpenIntegrator, type SimulateOptions } from './driver.js';
import type { Outcome, Sample } from './run.js';
import type { ResumableRun, RunState } from './run-state.js';

/**
 * A run that goes on when it is told to. It stops before anything is done that is due where it stands: rules, harvests
 * and actions see the same water as who reads it there.
 */
export class Stepping {
  private readonly driver: Driver;
  private readonly model: Model;
  /** What is still to be done where it stands: the start, or the end of a segment (at a mark of the water, or not). */
  private due: 'start' | 'mark' | 'end' = 'start';
  /** Whether an action waits to be done. */
  private waiting = false;
  private finished = false;

  constructor(model: Model, options: SimulateOptions, openIntegrator: OpenIntegrator) {
    this.driver = new Driver(model, options, openIntegrator);
    this.model = model;
  }

  /** Where it stands, d since the start. */
  get day(): number {
    return this.driver.state.time;
  }

  /** How it ended, where it has come to its end or has broken off. */
  get outcome(): Outcome | undefined {
    const { outcome } = this.driver.state;
    if (outcome !== undefined || !this.driver.isOver()) return outcome;
    return { kind: 'done', time: this.model.scenario.days };
  }

  /**
   * Runs to a time, d, or to the end of the run where that comes first. Returns whether the run goes on.
   * @throws RangeError for a time that has passed, and once the run was finished
   */
  advance(to: number): boolean {
    this.refuseFinished();
    const { driver } = this;
    if (!(to >= driver.state.time - INSTANT))
      throw new RangeError(`cannot run to day ${to}: the run stands at day ${driver.state.time}`);
    const whole = Math.round(to);
    const until = Math.abs(to - whole) <= INSTANT ? whole : to;
    while (!driver.isOver() && driver.state.time < until - INSTANT) {
      this.doWhatIsDue();
      this.due = driver.carry(until) ? 'mark' : 'end';
    }
    return !driver.isOver();
  }

  /**
   * Takes in an action to be done where the run stands, with those of that instant, as it goes on.
   * @throws RangeError when the run is over
   */
  do(action: Action): void {
    this.refuseFinished();
    if (this.driver.isOver()) throw new RangeError(`nothing can be done: the run is over at day ${this.day}`);
    this.driver.add({ ...action });
    this.waiting = true;
  }

  /** Everything as it stands, before what is due. */
  look(): Sample {
    return this.driver.look();
  }

  /** The last sample that the run has kept from before where it stands. */
  lastSample(): Sample | undefined {
    const { samples } = this.driver.record;
    const last = samples.at(-1);
    return last === undefined || last.time < this.day ? last : samples.at(-2);
  }

  /**
   * The state that it stands in.
   * @throws RangeError while an action waits to be done: it would be lost
   */
  state(): RunState {
    if (this.waiting)
      throw new RangeError(
        `no state at day ${this.day}: an action waits to be done there; take the state before it, or go on first`,
      );
    return this.driver.state;
  }

  /** The run up to where it stands. Nothing can be done with it afterwards. */
  finish(): ResumableRun {
    this.refuseFinished();
    if (this.due === 'start') this.doWhatIsDue();
    this.finished = true;
    return this.driver.finish();
  }

  private refuseFinished(): void {
    if (this.finished) throw new RangeError('the run was finished: open another');
  }

  private doWhatIsDue(): void {
    if (this.due === 'start') this.driver.start();
    else this.driver.begin(this.due === 'mark');
    this.waiting = false;
  }
}

/**
 * Runs a model from its start to its end.
 *
 * At each day boundary, in this order: record; harvest what is ripe; rules, by readings of the water as it
 * stands; actions of that instant in the order of `actionOrder`; rations and weather of the day; then integrate. Every instant at which
 * anything jumps (action, pump timer, hours of feeding, a water level reaching a mark) ends a segment.
 * Never throws for numerical trouble: the outcome names it and the run holds what was reached.
 */
export function simulate(model: Model, options: SimulateOptions = {}): ResumableRun {
  return simulateWith(model, options, integratorOf(options));
}

/** As `simulate`, with an integrator of the caller's: one that records, replays or times each segment. */
export function simulateWith(
  model: Model,
  options: SimulateOptions,
  openIntegrator: OpenIntegrator,
): ResumableRun {
  const driver = new Driver(model, options, openIntegrator);
  driver.start();
  while (driver.advance());
  return driver.finish();
}
