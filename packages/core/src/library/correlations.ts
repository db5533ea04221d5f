import { correlationCells } from './tables.generated.js';
import type { Mark } from './table-row.js';

/** A rank correlation (Spearman's) between two numbers of the tables. */
export interface RankCorrelation {
  readonly a: string;
  readonly b: string;
  /** Above -1 and below 1. */
  readonly rank: number;
  /** Holds only where both are drawn; without it an id that is not drawn is a fault. */
  readonly whereDrawn?: boolean;
}

/** A correlation of the tables with all that is known of it. */
interface CorrelationRow extends RankCorrelation {
  readonly conditions: string;
  /** Key in the table of sources. */
  readonly source: string;
  readonly page: string;
  readonly mark: Mark;
}

/**
 * Numbers of the tables that vary together, because one publication gives both or one measurement holds both: drawn apart
 * they make films that nobody has seen. They hold where both are drawn and neither is named by a correlation of the user.
 */
const tableCorrelations: readonly CorrelationRow[] = correlationCells.map(
  ([a, b, rank, conditions, source, page, mark]) => ({ a, b, rank, conditions, source, page, mark }),
);

/** What is asked for, and beside it the correlations of the tables between numbers that it does not name. */
export function withTableCorrelations(asked: readonly RankCorrelation[]): readonly RankCorrelation[] {
  const named = new Set(asked.flatMap(({ a, b }) => [a, b]));
  const ours = tableCorrelations.filter(({ a, b }) => !named.has(a) && !named.has(b));
  return [...asked, ...ours.map(({ a, b, rank }) => ({ a, b, rank, whereDrawn: true }))];
}
