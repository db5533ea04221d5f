import { createParameters, type Parameters } from './parameters.js';
import { originOf } from './origins.js';
import { givenIn } from './ranged-row.js';
import type { Mark, SourceCells } from './table-row.js';
import { sourceCells } from './origins.generated.js';

/** One source of the tables. */
export interface Source {
  readonly key: string;
  readonly citation: string;
  /** Year, or `none`. */
  readonly year: string;
  /** DOI, or `none` where none is recorded. */
  readonly doi: string;
  readonly note: string;
}

const toSource = ([key, citation, year, doi, note]: SourceCells): Source =>
  Object.freeze({ key, citation, year, doi, note });

/** Every source that our tables cite, sorted by key. */
export const sourceList: readonly Source[] = /* @__PURE__ */ Object.freeze(sourceCells.map(toSource));

const byKey: ReadonlyMap<string, Source> = new Map(sourceList.map((source) => [source.key, source]));

/** The citation of a source with year and DOI as far as they are known; undefined where the key is not ours. */
export function citationOf(key: string): string | undefined {
  const source = byKey.get(key);
  if (source === undefined) return undefined;
  return [source.citation, source.year, source.doi].filter((part) => part !== 'none').join(', ');
}

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
  parameters: Pick<Parameters, 'number'> = createParameters(),
): BibliographyEntry[] {
  const entries = new Map<string, BibliographyEntry & { ids: string[] }>();
  for (const id of [...new Set(ids)].sort()) {
    const number = parameters.number(id);
    const { source, mark } = originOf(number);
    const given = givenIn(number);
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
