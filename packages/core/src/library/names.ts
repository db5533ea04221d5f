import type { TableRow } from './table-row.js';
import { tableRows } from './table-rows.js';

/** What the tables have subjects of; the first part of an id such as `fish.nile-tilapia.body-nitrogen`. */
export type SubjectGroup =
  'fish' | 'crop' | 'feed' | 'media' | 'dose' | 'water' | 'aerator' | 'lime' | 'limit';

const general: ReadonlySet<string> = new Set(['constants', 'parameters']);

function subjectsOf(group: SubjectGroup, rows: Iterable<TableRow>): string[] {
  const found = new Set<string>();
  for (const { id, table } of rows) {
    const [first, subject] = id.split('.');
    if (first === group && subject !== undefined && !general.has(table)) found.add(subject);
  }
  return [...found];
}

/** Each group of our own tables is looked up once: they do not change. */
const known = new Map<SubjectGroup, readonly string[]>();

/**
 * The subjects of a group in the order of the tables: `names('feed')` is `['grower-32', ...]`. Of our tables, or
 * of the rows given (those of a scenario hold what the user added).
 */
export function names(group: SubjectGroup, rows?: Iterable<TableRow>): string[] {
  if (rows !== undefined) return subjectsOf(group, rows);
  const subjects = known.get(group) ?? subjectsOf(group, tableRows.values());
  known.set(group, subjects);
  return [...subjects];
}
