import type { Measurable } from '../scenario/scenario.js';

/** Order of the parts of a date written in figures with the year last. */
export type DateOrder = 'day-month-year' | 'month-day-year';

/** What a column holds: readings of one quantity in one vessel, feed, notes, or nothing of use. */
export type ColumnUse =
  | {
      readonly kind: 'readings';
      readonly reads: Measurable;
      readonly vessel: string;
      /** Unit of a bare number, as the scenario file writes units; '' for pH. */
      readonly unit: string;
      /** Values that the kit's card or strip can show, in `unit`, ascending; absent: any number. */
      readonly steps?: readonly number[];
      /** Readings are whole multiples of this, in `unit`; absent: taken from the decimals of the column. */
      readonly resolution?: number;
    }
  | {
      readonly kind: 'feed';
      /** Cohort that gets it, or `all` in the shares of their rations. */
      readonly cohort: string;
      /** Grams in one of what the column counts. */
      readonly grams: number;
    }
  | { readonly kind: 'notes' }
  | { readonly kind: 'skip' };

/** How the columns of a log are understood. Column names are those of the header, as they stand. */
export interface LogMap {
  /** Row of the header, 1-based. */
  readonly header: number;
  readonly date: string;
  /** Absent: found from the dates themselves. */
  readonly order?: DateOrder;
  readonly columns: ReadonlyMap<string, ColumnUse>;
  /** Grams in one of each measure of feed, such as a cup. */
  readonly measures: ReadonlyMap<string, number>;
}
