import type {
  BibliographyEntry,
  Budget,
  FatesOver,
  Manifest,
  NitrogenPaths,
  Run,
  RunAccount,
  RunEvent,
} from '@leat/core';
import type { KeptEnsemble } from '../ensemble/read-ensemble.js';

/** A vessel as it is drawn. */
export interface DrawnVessel {
  readonly name: string;
  readonly kind: string;
  /** m3. */
  readonly volume: number;
  /** What lives, grows or lies in it, one line each. */
  readonly holds: readonly string[];
}

/** A way of water as it is drawn. An end that is absent is outside. */
export interface DrawnFlow {
  readonly from?: string;
  readonly to?: string;
  /** Such as `pumped`, `gravity`, `top-up with mains`. */
  readonly kind: string;
  /** Mean over the run, m3/d. */
  readonly rate: number;
}

/** A level of the reservoir at which something happens. */
export interface LevelMark {
  /** m3. */
  readonly value: number;
  readonly text: string;
}

/** What only a scenario file tells, and a saved document does not. */
export interface ToldSystem {
  readonly note: string;
  readonly startDate: string;
  /** The question that the file opens with; empty where it opens with none. */
  readonly question: string;
  /** What was put over the file, such as `days=90`. */
  readonly changes: readonly string[];
  readonly facts: readonly string[];
  readonly vessels: readonly DrawnVessel[];
  readonly flows: readonly DrawnFlow[];
  readonly levels: readonly LevelMark[];
  readonly nitrogen: FatesOver;
  readonly paths: NitrogenPaths;
  /** What was assumed for want of data, and warnings. */
  readonly assumed: readonly string[];
  /** The run itself, to ask it why. */
  readonly run: Run;
}

/** All that a report tells of one run. */
export interface ToldRun {
  /** A, B, ... */
  readonly letter: string;
  readonly file: string;
  readonly account: RunAccount;
  readonly budgets: readonly Budget[];
  readonly events: readonly RunEvent[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
  readonly system?: ToldSystem;
  /** What many runs with numbers drawn from their ranges gave. */
  readonly ensemble?: KeptEnsemble['result'];
}
