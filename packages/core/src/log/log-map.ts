import type { ActedOn, OwnWords } from './action-words.js';
import type { Measurable } from '../scenario/scenario.js';

/** Order of the parts of a date written in figures with the year last. */
export type DateOrder = 'day-month-year' | 'month-day-year';

/** A kit or meter that a column is read with from a date on (ISO); its unit, steps and resolution in place of those before. */
export interface InstrumentChange {
  readonly from: string;
  /** Its name; absent: the date. */
  readonly instrument?: string;
  readonly unit: string;
  /** Values that the new kit can show, in its unit. */
  readonly steps?: readonly number[];
  /** Step in which the new kit reads, in its unit. */
  readonly resolution?: number;
}

/** What a column holds: readings of one quantity in one vessel, feed, what was done, notes, or nothing of use. */
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
      /** Name of the kit or meter, where the quantity is read by more than one. */
      readonly instrument?: string;
      /** Other instruments, each from a date on, in the order of time. */
      readonly changes?: readonly InstrumentChange[];
    }
  | {
      readonly kind: 'feed';
      /** Cohort that gets it, or `all` in the shares of their rations. */
      readonly cohort: string;
      /** Grams in one of what the column counts. */
      readonly grams: number;
    }
  | {
      /** What was done, in words. */
      readonly kind: 'actions';
      readonly on: ActedOn;
      /** Words that stand before each cell, for a column of bare amounts: `baking soda`. */
      readonly what: string;
      /** What stands behind a bare number: `g`, `%`. */
      readonly unit: string;
    }
  | { readonly kind: 'notes' }
  | { readonly kind: 'skip' };

/** How the columns of a log are understood. Column names are those of the header, as they stand. */
export interface LogMap {
  /** Row of the header, 1-based. */
  readonly header: number;
  readonly date: string;
  /** Column of the time of day, where it has one of its own. */
  readonly time?: string;
  /** Absent: found from the dates themselves. */
  readonly order?: DateOrder;
  readonly columns: ReadonlyMap<string, ColumnUse>;
  /** Grams in one of each measure of feed, such as a cup. */
  readonly measures: ReadonlyMap<string, number>;
  /** m3 of one of each measure of water, such as a bucket. */
  readonly volumes: ReadonlyMap<string, number>;
  /** The user's own words for products and actions, in small letters. */
  readonly words: OwnWords;
  /** Actions that the keeper has added to the log: lines as a system file writes them, as JSON. */
  readonly actions: readonly string[];
}
