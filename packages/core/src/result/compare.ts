import { compareFates, type ComparedFates } from './compare-fates.js';
import { compareLimits, type ComparedLimit } from './compare-limits.js';
import { compareQuantities, partingOf, type ComparedQuantity, type Parting } from './compare-quantities.js';
import type { RunAccount } from './run-account.js';

/** Several runs side by side. Every list with one entry for each run is in the order of the runs. */
export interface Comparison {
  /** Last output time of each run, d. */
  readonly ends: readonly number[];
  /** Share by which two values must differ to be apart. */
  readonly apart: number;
  /** Key quantities, the largest relative difference first. */
  readonly quantities: readonly ComparedQuantity[];
  /** When each run but the first parts from the first; null for never. */
  readonly partings: readonly (Parting | null)[];
  /** Limits passed in some runs and not in all. */
  readonly limits: readonly ComparedLimit[];
  readonly nitrogen: ComparedFates;
  readonly water: ComparedFates;
}

/**
 * Puts two or more runs side by side; differences are those of the others from the first.
 * @param apart share of the largest size of a quantity by which values must differ to be apart, 0..1
 * @throws RangeError for fewer than two runs or a share outside 0..1
 */
export function compareRuns(accounts: readonly RunAccount[], apart: number): Comparison {
  if (accounts.length < 2) throw new RangeError('a comparison needs at least two runs');
  if (!(apart >= 0 && apart <= 1)) throw new RangeError(`${apart} is no share from 0 to 1`);
  const [first, ...others] = accounts;
  return {
    ends: accounts.map(({ time }) => time[time.length - 1]),
    apart,
    quantities: compareQuantities(accounts),
    partings: others.map((other) => partingOf(first, other, apart)),
    limits: compareLimits(accounts),
    nitrogen: compareFates(accounts.map(({ nitrogen }) => nitrogen)),
    water: compareFates(accounts.map(({ water }) => water)),
  };
}
