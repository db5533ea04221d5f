import { tableRows } from './table-rows.js';

/** What the tables have subjects of; the first part of an id such as `fish.nile-tilapia.body-nitrogen`. */
export type SubjectGroup = 'fish' | 'crop' | 'feed' | 'media' | 'dose' | 'water' | 'limit';

const general: ReadonlySet<string> = new Set(['constants', 'parameters']);

function subjectsOf(group: SubjectGroup): string[] {
  const found = new Set<string>();
  for (const row of tableRows.values()) {
    const [first, subject] = row.id.split('.');
    if (first === group && subject !== undefined && !general.has(row.table)) found.add(subject);
  }
  return [...found];
}

/** Each group is looked up once: the tables do not change. */
const known = new Map<SubjectGroup, readonly string[]>();

/** The subjects of a group in the order of the tables: `names('feed')` is `['grower-32', ...]`. */
export function names(group: SubjectGroup): string[] {
  const subjects = known.get(group) ?? subjectsOf(group);
  known.set(group, subjects);
  return [...subjects];
}
