import type { Mark } from '../../packages/core/src/library/table-row.js';

/** A published range. */
interface Range {
  readonly low: number;
  readonly high: number;
}

/** How far the model may lie from what is published: in words for the table, and as an amount in the unit of the check. */
interface Tolerance {
  readonly words: string;
  readonly amount: number;
}

/**
 * One published value that the model is held against. What is uncertain in its digits [W] is never one. [C] values
 * were computed from the published formula by other code: they check an implementation, not the formula.
 */
export interface PublishedCheck {
  /** Unique, in kebab-case. */
  readonly id: string;
  /** What a hit shows, where it is another than that of its topic. */
  readonly kind?: CheckKind;
  /** Key of the library's sources, or of `citations.ts`. */
  readonly source: string;
  /** Page, table or section. */
  readonly where: string;
  readonly mark: Extract<Mark, 'R' | 'S' | 'C' | 'M'>;
  readonly what: string;
  readonly unit: string;
  readonly published: number | Range;
  readonly tolerance: Tolerance;
  /** The value by Leat. */
  readonly compute: () => number;
  /** Why it is known to be missed; the test then asserts that it is missed still. */
  readonly miss?: string;
  /** Which number of the tables was chosen with this value in view: a hit is then no test of the model. */
  readonly chosen?: string;
}

/**
 * What a hit shows: that a published `formula` is built as it stands, or that a `process` (a rate, a yield, a share) comes
 * out as it was measured.
 */
export type CheckKind = 'formula' | 'process';

/** Checks of one subject. */
export interface Topic {
  readonly title: string;
  readonly kind: CheckKind;
  /** What is left out, assumed or odd: a line or two for the reader of the table. */
  readonly note?: string;
  readonly checks: readonly PublishedCheck[];
}

/** What a hit of a check shows. A value computed from a formula never shows more than the formula. */
export function kindOf({ kind, mark }: PublishedCheck, topic: Pick<Topic, 'kind'>): CheckKind {
  return mark === 'C' ? 'formula' : (kind ?? topic.kind);
}

/** Share of an amount that counts as rounding. */
const rounding = 1e-9;

/** Whether a value of the model lies in the published range widened by the tolerance. */
export function hits(check: Pick<PublishedCheck, 'published' | 'tolerance'>, value: number): boolean {
  const { published, tolerance } = check;
  const { low, high } = typeof published === 'number' ? { low: published, high: published } : published;
  const slack = tolerance.amount * (1 + rounding);
  return value >= low - slack && value <= high + slack;
}
