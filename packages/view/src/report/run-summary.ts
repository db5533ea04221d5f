import type {
  BibliographyEntry,
  Budget,
  EnsembleResult,
  FatesOver,
  Manifest,
  NitrogenPaths,
  Run,
  RunAccount,
  RunEvent,
  TableRow,
} from '@leat/core';
import type { DrawnFlow, DrawnVessel, LevelMark, Stand } from '../pictures/index.js';

/** What only a scenario file tells, and a saved document does not. */
export interface SystemSummary {
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
  readonly stands: readonly Stand[];
  readonly nitrogen: FatesOver;
  readonly paths: NitrogenPaths;
  /** What was assumed for want of data, and warnings. */
  readonly assumed: readonly string[];
  /** The run itself, to ask it why. */
  readonly run: Run;
}

/** What many runs with numbers drawn from their ranges gave, as far as a report tells of it. */
export type EnsembleSummary = Omit<EnsembleResult, 'drawn'> & {
  readonly drawn: readonly Pick<TableRow, 'id'>[];
};

/** All that a report tells of one run. */
export interface RunSummary {
  /** A, B, ... */
  readonly letter: string;
  readonly file: string;
  readonly account: RunAccount;
  readonly budgets: readonly Budget[];
  readonly events: readonly RunEvent[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
  readonly system?: SystemSummary;
  /** What many runs with numbers drawn from their ranges gave. */
  readonly ensemble?: EnsembleSummary;
}
