import { sha256 } from './hashes.js';
/**
 * A document that is kept, with a hash over all of it under the last key, `hash`: so that an edited, cut or mixed one is
 * known. The hash is of what the document says as JSON, not of how that is set in lines.
 * @param hash SHA-256; a faster one where a document is large
 */
export function sealed(document, hash = sha256) {
    return { ...document, hash: hash(JSON.stringify(document)) };
}
/**
 * What is wrong with a kept document as a whole: it has no hash, or one of something else. Nothing where it is as it was
 * written. Its form is looked at before (`formProblem`).
 * @param document what the file holds, as JSON
 */
export function sealProblem(document, hash = sha256) {
    const expected = 'the file as it was written';
    const held = typeof document === 'object' && document !== null ? { ...document } : {};
    const { hash: written, ...rest } = held;
    if (written === undefined)
        return { problem: 'the file has no hash over what it holds', expected };
    if (hash(JSON.stringify(rest)) === written)
        return undefined;
    return { problem: 'the file was changed after it was written: its hash is of something else', expected };
}
//# sourceMappingURL=seal.js.map