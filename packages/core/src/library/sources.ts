import { createParameters, type Parameters } from './parameters.js';
import type { Mark } from './table-row.js';
import { citationOf } from './source-list.js';

/** A source, one way in which numbers came from it, and the ids of those numbers. */
export interface BibliographyEntry {
  /** Key in our list of sources; what the user wrote, where the source is the user's own. */
  readonly key: string;
  readonly citation: string;
  readonly mark: Mark;
  /** The file in which the user gave these numbers; absent: they are ours. */
  readonly given?: string;
  readonly ids: readonly string[];
}

/** `my-numbers.tsv:3` without its line. */
const fileOf = (where: string): string => where.replace(/:\d+$/, '');

/**
 * Where numbers come from: one entry a source and mark, sorted by key then mark, ids sorted; what the user gave
 * stands apart from what is ours.
 * `parameters` tells which of them the user gave (default: none). Throws RangeError on an unknown id.
 */
export function bibliography(
  ids: readonly string[],
  parameters: Pick<Parameters, 'row'> = createParameters(),
): BibliographyEntry[] {
  const entries = new Map<string, BibliographyEntry & { ids: string[] }>();
  for (const id of [...new Set(ids)].sort()) {
    const { source, mark, given } = parameters.row(id);
    const citation = citationOf(source) ?? (given === undefined ? undefined : source);
    if (citation === undefined) throw new RangeError(`${id}: no source "${source}" in the tables`);
    // The source `scenario` says it already.
    const file = given === undefined || source === 'scenario' ? {} : { given: fileOf(given) };
    const place = JSON.stringify([source, mark, file.given ?? '']);
    const entry = entries.get(place) ?? { key: source, citation, mark, ...file, ids: [] };
    entry.ids.push(id);
    entries.set(place, entry);
  }
  return [...entries].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}
