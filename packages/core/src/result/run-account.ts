import type { Outcome } from '../run/run.js';
import type { Budget } from './budget.js';
import type { LimitResult } from './limits.js';
import type { Series } from './series.js';

/** What one run says, as far as it is compared with others: from a run just made or from a saved document. */
export interface RunAccount {
  readonly title: string;
  readonly outcome: Outcome;
  /** Output times, d, ascending, at least one. */
  readonly time: readonly number[];
  readonly series: readonly (Pick<Series, 'name' | 'unit'> & { readonly values: ArrayLike<number> })[];
  /** Names of the series worth comparing, in the order in which a person would read them. */
  readonly keys: readonly string[];
  readonly limits: readonly LimitResult[];
  /** Of the whole system. */
  readonly nitrogen: Budget;
  readonly water: Budget;
}
