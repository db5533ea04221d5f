import { group, sum } from 'd3-array';
import type { LogFeed, Oddity } from './water-log.js';

/** Rows that tell a total from its parts, and the share of them that must agree. */
const told = { rows: 5, share: 0.9 } as const;

/**
 * Feed without the columns that are the totals of others: one whose numbers are the sums of the other columns in nearly all
 * rows in which both stand. Where parts stand in a row the total is left out; where only it stands it counts.
 */
export function withoutTotals(feed: readonly LogFeed[], oddities: Oddity[]): LogFeed[] {
  const columns = [...new Set(feed.map(({ column }) => column))];
  if (columns.length < 3) return [...feed];
  const byRow = [...group(feed, ({ row }) => row).values()];
  const isTotal = (column: string): boolean => {
    const pairs = byRow.flatMap((cells) => {
      const own = cells.find((cell) => cell.column === column);
      const others = cells.filter((cell) => cell.column !== column);
      return own === undefined || others.length < 2
        ? []
        : [{ own: own.grams, others: sum(others, ({ grams }) => grams) }];
    });
    const fed = pairs.filter(({ own, others }) => own > 0 || others > 0);
    const alike = fed.filter(
      ({ own, others }) => Math.abs(own - others) <= 0.01 * Math.max(own, others) + 0.5,
    );
    return fed.length >= told.rows && alike.length >= told.share * fed.length;
  };
  const total = columns.find(isTotal);
  if (total === undefined) return [...feed];
  const beside = new Set(feed.filter(({ column }) => column !== total).map(({ row }) => row));
  const [first] = feed.filter(({ column }) => column === total);
  const others = columns.filter((column) => column !== total).join(', ');
  oddities.push({
    row: first.row,
    column: total,
    text: total,
    problem: `the sum of ${others}`,
    done: 'not counted beside its parts',
  });
  return feed.filter(({ column, row }) => column !== total || !beside.has(row));
}
