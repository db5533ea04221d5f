import { createParameters } from './parameters.js';
import { sourceCells } from './tables.generated.js';
const toSource = ([key, citation, year, doi, note]) => ({
    key,
    citation,
    year,
    doi,
    note,
});
/** Every source that our tables cite, sorted by key. */
export const sourceList = sourceCells.map(toSource);
const byKey = new Map(sourceList.map((source) => [source.key, source]));
/** The citation of a source with year and DOI as far as they are known; undefined where the key is not ours. */
export function citationOf(key) {
    const source = byKey.get(key);
    if (source === undefined)
        return undefined;
    return [source.citation, source.year, source.doi].filter((part) => part !== 'none').join(', ');
}
/** `my-numbers.tsv:3` without its line. */
const fileOf = (where) => where.replace(/:\d+$/, '');
/**
 * Where numbers come from: one entry a source and mark, sorted by key then mark, ids sorted; what the user gave
 * stands apart from what is ours.
 * `parameters` tells which of them the user gave (default: none). Throws RangeError on an unknown id.
 */
export function bibliography(ids, parameters = createParameters()) {
    const entries = new Map();
    for (const id of [...new Set(ids)].sort()) {
        const { source, mark, given } = parameters.row(id);
        const citation = citationOf(source) ?? (given === undefined ? undefined : source);
        if (citation === undefined)
            throw new RangeError(`${id}: no source "${source}" in the tables`);
        // The source `scenario` says it already.
        const file = given === undefined || source === 'scenario' ? {} : { given: fileOf(given) };
        const place = JSON.stringify([source, mark, file.given ?? '']);
        const entry = entries.get(place) ?? { key: source, citation, mark, ...file, ids: [] };
        entry.ids.push(id);
        entries.set(place, entry);
    }
    return [...entries].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}
//# sourceMappingURL=sources.js.map