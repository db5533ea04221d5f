import { formProblem } from '@leat/core';
import { FileError } from './file-error.js';
import { documentVersions, type DocumentForm } from './render/saved-document.js';

/** The fault of a document that is of another form or version than asked for; undefined where it is right. */
export function formFault(file: string, document: unknown, schema: DocumentForm): FileError | undefined {
  const form = formProblem(document, schema, documentVersions[schema]);
  return form === undefined
    ? undefined
    : new FileError(`${file}: ${form.problem}; expected ${form.expected}: run it again with this leat`);
}
