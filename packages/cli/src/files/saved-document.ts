import { formProblem, sealProblem } from '@leat/core';
import { type DocumentForm, documentVersions, savedText } from '@leat/view/documents';
import { digest } from './digest.js';
import { FileError } from './read.js';

/**
 * The text of a document that may be kept: see `savedText`.
 * @param replace what stands for a value that JSON lacks
 */
export const savedDocument = (
  schema: DocumentForm,
  document: object,
  replace?: (key: string, value: unknown) => unknown,
): string => savedText(schema, document, digest, replace);

/** The fault of a document that is not as it was written; undefined where it is. Large ones are many megabytes. */
export function sealFault(file: string, document: unknown): FileError | undefined {
  const seal = sealProblem(document, digest);
  return seal === undefined
    ? undefined
    : new FileError(`${file}: ${seal.problem}; expected ${seal.expected}: run it again with this leat`);
}

/**
 * The document in the text of a file, by JSON; undefined where it is none. Throws FileError where it begins as one that
 * Leat kept and is cut short, or has something behind its end.
 */
export function documentIn(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const [, schema] = /^\s*\{\s*"schema":\s*"(leat-[a-z-]+)"/.exec(text) ?? [];
    if (schema === undefined) return undefined;
    throw new FileError(
      `${file}: a document of the schema ${schema} that is cut short, damaged or has something behind its end; expected the file as it was written`,
    );
  }
}

/** The fault of a document that is of another form or version than asked for; undefined where it is right. */
export function formFault(file: string, document: unknown, schema: DocumentForm): FileError | undefined {
  const form = formProblem(document, schema, documentVersions[schema]);
  return form === undefined
    ? undefined
    : new FileError(`${file}: ${form.problem}; expected ${form.expected}: run it again with this leat`);
}
