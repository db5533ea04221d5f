import { sha256 } from './hashes.js';
/** JSON with sorted keys, numbers that JSON lacks as words, and no `where` (it says on which line a thing stood). */
function canonical(value) {
    if (typeof value === 'number' && !Number.isFinite(value))
        return JSON.stringify(String(value));
    if (value === null || typeof value !== 'object')
        return JSON.stringify(value);
    if (Array.isArray(value))
        return `[${value.map(canonical).join(',')}]`;
    const entries = Object.entries(value)
        .filter(([key, held]) => held !== undefined && key !== 'where')
        .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonical(held)}`).join(',')}}`;
}
/** Hash of plain values, 64 hexadecimal digits: the same for the same values whatever the order of keys. */
export function contentHash(value) {
    return sha256(canonical(value));
}
//# sourceMappingURL=content-hash.js.map