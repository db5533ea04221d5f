import type { Parameters } from '../../library/parameters.js';
import type { Scenario } from '../../scenario/scenario.js';
import type { PlainFile } from './file-edit.js';
import type { Situation } from './situation.js';

/** Kinds of changes that may be advised. */
export const changeNames = [
  ...(['gentler', 'sooner', 'smaller-dose', 'feed', 'stagger', 'fewer'] as const),
  ...(['harvest-fish', 'leave-empty', 'salt', 'base', 'top-up'] as const),
  'change-water',
  ...(['air', 'media', 'shade', 'heat'] as const),
] as const;

/** One kind of change: see `changeNames`. */
export type ChangeName = (typeof changeNames)[number];

/**
 * What a change asks of who makes it: 1 to do less, later or in steps; 2 to do something once or once a week; 3 every day;
 * 4 to buy or build.
 */
export type Effort = 1 | 2 | 3 | 4;

/**
 * A change of a system file in whole `steps`, from 1 to `most`, the less the better. Laid over a file that another change
 * has been laid over already it does its own part.
 */
export interface Change {
  readonly name: ChangeName;
  readonly effort: Effort;
  /** Most steps that are tried. */
  readonly most: number;
  /** Whether much of it may be too much: then less is tried where much is not enough. Absent: the more the better. */
  readonly excess?: true;
  /** Whether it may end before the run does. */
  readonly ends: boolean;
  /** d: from when on it holds; absent: from the start, or whenever the file says. */
  readonly from?: number;
  /** Unit of the amount as it is told: `%`, `L/d`, `degC` ... */
  readonly unit: string;
  /** What it is done to: vessels, cohorts, plantings, a product. */
  readonly at: readonly string[];
  /** The amount of so many `steps`, in `unit`. */
  amount(steps: number): number;
  /**
   * The file with so many `steps` of the change made.
   * @param until d: when it ends, where it ends before the run does
   */
  apply(file: PlainFile, steps: number, until?: number): PlainFile;
}

/** What a change is made of: the system as it is, and where it stands. */
export interface ChangeContext {
  readonly scenario: Scenario;
  readonly parameters: Parameters;
  /** What the file says as it is. */
  readonly file: PlainFile;
  readonly situation: Situation;
  /** Whether the change was asked for by its name, so that it is made where it would not be thought of. */
  readonly asked: boolean;
}

/** Opens a kind of change for a system; undefined where it can do nothing there. */
export type OpenChange = (context: ChangeContext) => Change | undefined;
