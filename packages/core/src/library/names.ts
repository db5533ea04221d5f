import { numberColumns } from './numbers.generated.js';
import { tableValues } from './table-values.js';

/** What the tables have subjects of; the first part of an id such as `fish.nile-tilapia.body-nitrogen`. */
export type SubjectGroup =
  'fish' | 'crop' | 'feed' | 'media' | 'dose' | 'water' | 'aerator' | 'lime' | 'limit';

/** Whether an id is that of a subject: `fish.nile-tilapia.mortality`, and neither `fish.rot` nor `water.kw.a`. */
const ofSubject = (words: readonly string[]): boolean =>
  words.length === 3 && !numberColumns.general.includes(`${words[0]}.${words[1]}`);

function subjectsOf(group: SubjectGroup, ids: Iterable<string>): string[] {
  const found = new Set<string>();
  for (const id of ids) {
    const words = id.split('.');
    if (words[0] === group && ofSubject(words)) found.add(words[1]);
  }
  return [...found];
}

/** Each group of our own tables is looked up once: they do not change. */
const known = new Map<SubjectGroup, readonly string[]>();

/**
 * The subjects of a group in the order of the tables: `names('feed')` is `['grower-32', ...]`. Of our tables, or
 * of the ids given (those of a scenario hold what the user added).
 */
export function names(group: SubjectGroup, ids?: Iterable<string>): string[] {
  if (ids !== undefined) return subjectsOf(group, ids);
  const subjects = known.get(group) ?? subjectsOf(group, tableValues.keys());
  known.set(group, subjects);
  return [...subjects];
}
