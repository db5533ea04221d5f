import { type Parameters } from './parameters.js';
import type { Mark } from './table-row.js';
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
/** Every source that our tables cite, sorted by key. */
export declare const sourceList: readonly Source[];
/** The citation of a source with year and DOI as far as they are known; undefined where the key is not ours. */
export declare function citationOf(key: string): string | undefined;
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
/**
 * Where numbers come from: one entry a source and mark, sorted by key then mark, ids sorted; what the user gave
 * stands apart from what is ours.
 * `parameters` tells which of them the user gave (default: none). Throws RangeError on an unknown id.
 */
export declare function bibliography(ids: readonly string[], parameters?: Pick<Parameters, 'row'>): BibliographyEntry[];
//# sourceMappingURL=sources.d.ts.map