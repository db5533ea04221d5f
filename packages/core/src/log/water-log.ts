import type { Measurable } from '../scenario/scenario.js';

/** One reading: what is known of a quantity is an interval, because kits have steps and strips say "more than". */
export interface LogReading {
  /** ISO date, yyyy-mm-dd. */
  readonly date: string;
  /** Part of the day at which it was taken, 0..<1; readings without a time stand at 0. */
  readonly hour: number;
  /** Row of the file, 1-based, and the column's name. */
  readonly row: number;
  readonly column: string;
  readonly reads: Measurable;
  readonly vessel: string;
  /** Lower bound in the internal unit: -Infinity where the reading does not say. */
  readonly low: number;
  /** Upper bound: Infinity where the reading does not say. */
  readonly high: number;
  /** The figure where one was written; else the middle of the bounds, or the finite one. */
  readonly value: number;
  /** As written. */
  readonly text: string;
  /** With what it was read, where the map tells of more than one: a name, or the date from which it was used; '' the first. */
  readonly instrument?: string;
}

/** Feed that was given: so many `grams` on a date; `row` of the file, 1-based. */
export interface LogFeed {
  readonly date: string;
  readonly row: number;
  readonly column: string;
  /** Cohort, or `all`. */
  readonly cohort: string;
  readonly grams: number;
}

/** A note of the keeper, from a `row` of the file, 1-based. */
export interface LogNote {
  readonly date: string;
  readonly row: number;
  readonly text: string;
}

/** Something done to the system that the log tells of: a line as a system file writes it; `row` of the file, 1-based. */
export interface LogAction {
  readonly date: string;
  readonly row: number;
  /** As written. */
  readonly text: string;
  readonly line: string;
}

/** A value that is not as it should be, and what was done about it; `row` of the file, 1-based. */
export interface Oddity {
  readonly row: number;
  readonly column: string;
  /** As written. */
  readonly text: string;
  /** What is odd, one clause. */
  readonly problem: string;
  /** What was done, one clause. */
  readonly done: string;
}

/** A water-test log as read. */
export interface WaterLog {
  readonly file: string;
  /** First and last date; '' where no row has a date. */
  readonly from: string;
  readonly to: string;
  /** Rows with a date. */
  readonly days: number;
  /** In the order of the file. */
  readonly readings: readonly LogReading[];
  readonly feed: readonly LogFeed[];
  readonly notes: readonly LogNote[];
  /** What was done, of columns that the map names as such: it is laid over the system file. */
  readonly actions: readonly LogAction[];
  /** Actions that the map adds, as JSON lines of a system file. */
  readonly added: readonly string[];
  readonly oddities: readonly Oddity[];
}
