import { createParameters, type Parameters } from './parameters.js';
import type { Mark } from './table-row.js';
import { sourceCells } from './tables.generated.js';

/** A source, one way in which numbers came from it, and the ids of those numbers. */
export interface BibliographyEntry {
  readonly key: string;
  readonly citation: string;
  readonly mark: Mark;
  readonly ids: readonly string[];
}

const citations: ReadonlyMap<string, string> = new Map(
  sourceCells.map(([key, citation, year, doi]) => [
    key,
    [citation, year, doi].filter((part) => part !== 'none').join(', '),
  ]),
);

/**
 * Where numbers come from: one entry a source and mark, sorted by key then mark, ids sorted.
 * `parameters` tells which of them the user gave (default: none). Throws RangeError on an unknown id.
 */
export function bibliography(
  ids: readonly string[],
  parameters: Pick<Parameters, 'row'> = createParameters(),
): BibliographyEntry[] {
  const entries = new Map<string, BibliographyEntry & { ids: string[] }>();
  for (const id of [...new Set(ids)].sort()) {
    const { source, mark } = parameters.row(id);
    const citation = citations.get(source);
    if (citation === undefined) throw new RangeError(`${id}: no source "${source}" in the tables`);
    const place = `${source} ${mark}`;
    const entry = entries.get(place) ?? { key: source, citation, mark, ids: [] };
    entry.ids.push(id);
    entries.set(place, entry);
  }
  return [...entries].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}
