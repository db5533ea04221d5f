import type { SourceCells } from './table-row.js';
import { sourceCells } from './tables.generated.js';

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

const toSource = ([key, citation, year, doi, note]: SourceCells): Source => ({
  key,
  citation,
  year,
  doi,
  note,
});

/** Every source that our tables cite, sorted by key. */
export const sourceList: readonly Source[] = sourceCells.map(toSource);

const byKey: ReadonlyMap<string, Source> = new Map(sourceList.map((source) => [source.key, source]));

/** The citation of a source with year and DOI as far as they are known; undefined where the key is not ours. */
export function citationOf(key: string): string | undefined {
  const source = byKey.get(key);
  if (source === undefined) return undefined;
  return [source.citation, source.year, source.doi].filter((part) => part !== 'none').join(', ');
}
