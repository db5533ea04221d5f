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
