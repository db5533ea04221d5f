import type { TableRow } from './table-row.js';

/** What a table of the user says of a number beside the number and its range. */
export interface GivenRow {
  readonly unit: string;
  readonly distribution: TableRow['distribution'];
  readonly conditions: string;
  readonly source: string;
  readonly page: string;
  readonly mark: TableRow['mark'];
}

/**
 * A number of the tables given anew by the user, or a new one: `value` and its range `low` to `high` in the unit of
 * the row.
 */
export interface Override {
  readonly id: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** The rest of the row, where it stood in a table of the user; it may then be a number we have not. */
  readonly row?: GivenRow;
  readonly where?: string;
}

/** What a user gave of a number: beside the tables of the library, or as a whole row of an extension (`table` is `own`). */
export type Given = Override | TableRow;

/** A number as a run has it. */
export interface NumberInUse {
  readonly id: string;
  /** In the internal unit of its row; drawn, where numbers were. */
  readonly value: number;
  /** What the user gave in its place, in the order given: the last holds. */
  readonly given: readonly Given[];
}
