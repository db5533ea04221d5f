import type { Setting } from '../../../packages/core/src/scenario/file/set-value.js';
import type { TableRow } from '../../../packages/core/src/library/table-row.js';
import type { Run } from '../../../packages/core/src/run/run.js';

/** The runs of one draw by name, such as `unit` or `pH 6`. */
export type Runs = Readonly<Record<string, Run>>;

/** A change of one assumption, and where the prediction then lies, with the numbers of the tables as they are. */
interface Blame {
  /** The assumption in words. */
  readonly assumption: string;
  readonly set: readonly Setting[];
  readonly low: number;
  readonly high: number;
}

/** One published quantity of a system, held against the band of the model. */
export interface SystemQuantity {
  readonly what: string;
  readonly unit: string;
  /** A published number as the range that rounds to it, or a published range. */
  readonly published: { readonly low: number; readonly high: number };
  readonly where: string;
  readonly mark: Extract<TableRow['mark'], 'R' | 'S' | 'C' | 'M'>;
  /** Value by Leat from the runs of one draw. */
  readonly value: (runs: Runs) => number;
  /** Why it is missed, as far as it is known; the test asserts that it is missed still. */
  readonly miss?: string;
  /** Why its band is too wide to say anything; the test asserts that it is so still. */
  readonly vague?: string;
  /**
   * A share or a ratio that may come near 0, where a factor says nothing: its band is narrow when it is no wider than three
   * quarters of the published middle.
   */
  readonly span?: 'difference';
  /** Tests of the reason: the same prediction with one assumption changed. */
  readonly blame?: readonly Blame[];
  /** What went in that makes a hit no test, or a weak one. */
  readonly chosen?: string;
}

/** What a scenario had to assume and of which a source tells the range: drawn evenly in it, with the numbers of the tables. */
export interface Assumed {
  /** Key of the file, as in {@link Setting}. */
  readonly path: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** What it is and where its range comes from, in words. */
  readonly why: string;
}

/** A whole system that is described in a publication. */
export interface SystemCase {
  readonly name: string;
  readonly publication: string;
  /** Name of the scenario beside this file, without `.yaml`. */
  readonly file: string;
  /** Draws of the numbers of the tables: 1 more than a multiple of 20, so that percentiles are members. */
  readonly draws: number;
  /** Runs of one draw: what is set in the scenario for each. */
  readonly runs: Readonly<Record<string, readonly Setting[]>>;
  readonly quantities: readonly SystemQuantity[];
  /** Absent: all that the file assumes stays as it stands in every draw. */
  readonly assumed?: readonly Assumed[];
  /** Length of the end of its runs in which it must work, d; absent: all but the first fifth. */
  readonly window?: number;
  /** Why it fails in more than a twentieth of the draws, where it does: no quantity of it is then a hit. */
  readonly fails?: string;
}
