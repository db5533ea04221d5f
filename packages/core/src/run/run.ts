import type { Model } from '../model/model.js';
import type { Account, Component } from '../processes/components.js';
import type { WorkCounts } from '../solve/contract.js';

/** Something that happened at a time: an action, a harvest, a pump that tripped, a vessel run dry. */
export interface RunEvent {
  /** d since the start. */
  readonly time: number;
  readonly kind: string;
  /** Vessel, cohort, planting or pump. */
  readonly place: string;
  readonly text: string;
  /** Whether less was done than was asked for; the text says what of what. */
  readonly short?: true;
}

/** How a run ended, with the usual reason in words when it is not `done`. */
export interface Outcome {
  readonly kind:
    | 'done'
    | 'step-too-small'
    | 'too-many-steps'
    | 'not-finite'
    | 'singular'
    | 'chattering'
    | 'negative-state';
  /** d reached. */
  readonly time: number;
  /** Component and place that limited the step, where one can be named. */
  readonly worst?: string;
  /** Usual reasons and what to look at. */
  readonly advice?: string;
}

/** What jumped across the edge of the system at an instant: an account gives (+) to a state or takes (-). */
export interface Posting {
  readonly account: Account;
  readonly component: Component;
  /** Vessel that gained (+) or lost (-). */
  readonly vessel: string;
  /** In the unit of the component. */
  readonly amount: number;
  /** Content comes from the state of this index (-1: of the component at large). */
  readonly state: number;
}

/** A product put in at an instant, by a person or a plan: its `mass` in g. Dosers that hold a value have rows of their own. */
export interface Dose {
  /** d since the start. */
  readonly time: number;
  readonly vessel: string;
  readonly product: string;
  readonly mass: number;
}

/** A snapshot of everything at an output time. Arrays are owned by the run. */
export interface Sample {
  /** d since the start. */
  readonly time: number;
  /** States, in the order and units of the layout of the model. */
  readonly y: Float64Array;
  /** Extents since the start, one per row of the model. */
  readonly x: Float64Array;
  /** Volume of each vessel, m3. */
  readonly volume: Float64Array;
  /** Water carried by each stream since the start, m3. */
  readonly carried: Float64Array;
  /** Water in the rain tank, m3. */
  readonly rain: number;
  /** Water that ran over the edge of the rain tank since the start, m3. */
  readonly spilled: number;
  /** Number of postings made up to this time: postings[0 .. posted-1]. */
  readonly posted: number;
  /** Water temperature of each vessel on this day, degC. */
  readonly temperature: Float64Array;
  /** Ionic strength of each vessel in the morning, mol L-1, held through the day. */
  readonly ionic: Float64Array;
  /** Feed offered to each cohort, g d-1. */
  readonly fed: Float64Array;
  /** Evapotranspiration over the whole system on this day, m3 d-1. */
  readonly evapotranspiration: number;
}

/** A finished (or broken-off) run. */
export interface Run {
  readonly model: Model;
  readonly outcome: Outcome;
  /**
   * One sample per output time, ascending, the first at the start; taken before the actions of its instant (the first:
   * after them).
   */
  readonly samples: readonly Sample[];
  /**
   * Samples between the output times, ascending: for three days after something that disturbed the system (see
   * `disturbing`), the first four of a kind and place, so that a fright of hours is seen at daily output too. Absent: none
   * were taken.
   */
  readonly between?: readonly Sample[];
  readonly postings: readonly Posting[];
  readonly events: readonly RunEvent[];
  /** What was dosed by actions, plans and rules, in order of time. */
  readonly doses: readonly Dose[];
  /** Age of each batch at the end, d; NaN where bare. */
  readonly ages: Float64Array;
  readonly work: WorkCounts;
  readonly integrator: string;
  /** Relative tolerance of the integration. */
  readonly tolerance: number;
}

/** What series are read from: a model and the samples of its run. Names and units need no samples. */
export type SampledRun = Pick<Run, 'model' | 'samples'>;

const advice: Readonly<Record<Outcome['kind'], string>> = {
  done: '',
  'step-too-small':
    'the step fell below what numbers can resolve: usually a vessel of almost no water, a huge flow or a rate without its substrate',
  'too-many-steps':
    'the work limit was reached: usually a timer of seconds over months, or a tolerance far too fine',
  'not-finite':
    'a rate was not a finite number: usually water outside pH 0-14 (alkalinity without carbon) or a parameter of zero in a divisor',
  singular:
    'the linear system could not be solved: usually a parameter that is infinite or a vessel of no water',
  chattering:
    'water switched states thousands of times in a day: usually a pump whose restart level is too near its inlet',
  'negative-state':
    'an amount went below zero by more than the tolerance: a rate does not stop when its substrate ends',
};

/** The usual reasons of an ending and what to look at. */
export function adviceFor(kind: Outcome['kind']): string {
  return advice[kind];
}
