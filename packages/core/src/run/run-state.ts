import type { RandomState } from '../base/random.js';
import type { Model } from '../model/model.js';
import type { PhMemory } from '../model/water-look.js';
import type { StepMemory } from '../solve/contract.js';
import type { CloseLook } from './close-look.js';
import type { CropClock } from './crop-clock.js';
import type { Day } from './forcing.js';
import type { Hydraulics, WaterState } from './hydraulics.js';
import type { Ledger } from './ledger.js';
import type { Operation } from './operation.js';
import type { Dose, Outcome, Posting, Run, RunEvent, Sample } from './run.js';

/** How a rule stands. */
export interface ControlState {
  /** Whether it has acted and not let go since. */
  active: boolean;
  /** When it last acted, d (-Infinity: never). */
  last: number;
  /** How often it has acted. */
  times: number;
  /** Readings in a row, the last one too, at which it turned on or off. */
  turns: number;
  /** Whether it was said that it chatters. */
  chatters: boolean;
  /** Its own random numbers, for the errors of its readings. */
  readonly random: RandomState;
}

/**
 * All that the future of a run depends on, beside its model and options, between two segments. Plain data: a
 * structured clone of it is that moment for good, and a run goes on from the clone to the same bytes.
 */
export interface RunState {
  /** d since the start. */
  time: number;
  /** Amount of each state and extent of each row since the start, in the order and units of the model. */
  readonly y: Float64Array;
  readonly x: Float64Array;
  readonly water: WaterState;
  readonly operation: Operation;
  /** When each batch was planted, d; NaN while bare. */
  readonly planted: Float64Array;
  readonly day: Day;
  /** Of each rule of the scenario. */
  readonly controls: readonly ControlState[];
  /** Of each doser of the scenario: whether it gave its most and did not hold at the last day boundary. */
  readonly spent: boolean[];
  /** Index of the next action in the order of the run, and of the next output time. */
  nextAction: number;
  nextOutput: number;
  /** How often the water came to a mark on this day. */
  marks: number;
  /** After which event samples are taken between the output times. */
  readonly look: CloseLook;
  /** What the numerical methods go on from; it decides the last places of results. */
  readonly memory: { readonly steps?: StepMemory; readonly pH: PhMemory };
  /** How the run ended, where it broke off. */
  outcome?: Outcome;
}

/** What a run has left behind; nothing of its future depends on it. */
export interface RunRecord {
  readonly samples: Sample[];
  readonly between: Sample[];
  readonly postings: Posting[];
  readonly events: RunEvent[];
  readonly doses: Dose[];
}

/** A run at work: its model, its state, what it leaves behind, and the parts that move the state. */
export interface RunParts {
  readonly model: Model;
  readonly state: RunState;
  readonly record: RunRecord;
  readonly ledger: Ledger;
  readonly crops: CropClock;
  readonly hydraulics: Hydraulics;
}

/** A run that was simulated, and can be gone on from. */
export interface ResumableRun extends Run {
  /** Where it ended: all that the rest of it would depend on; `endStateOf` says it by name. @internal */
  readonly state: RunState;
}
