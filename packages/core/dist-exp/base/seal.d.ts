import type { FormProblem } from './form-problem.js';
/** A hash of a text, as hexadecimal digits. */
export type TextHash = (text: string) => string;
/**
 * A document that is kept, with a hash over all of it under the last key, `hash`: so that an edited, cut or mixed one is
 * known. The hash is of what the document says as JSON, not of how that is set in lines.
 * @param hash SHA-256; a faster one where a document is large
 */
export declare function sealed<T extends object>(document: T, hash?: TextHash): T & {
    readonly hash: string;
};
/**
 * What is wrong with a kept document as a whole: it has no hash, or one of something else. Nothing where it is as it was
 * written. Its form is looked at before (`formProblem`).
 * @param document what the file holds, as JSON
 */
export declare function sealProblem(document: unknown, hash?: TextHash): FormProblem | undefined;
//# sourceMappingURL=seal.d.ts.map