import { formProblem } from '@leat/core';
import { FileError } from './read.js';

/** The forms of the documents that `--json` prints; each has its own version, which changes with its form. */
const documentVersions = {
  'leat-run': 1,
  'leat-comparison': 1,
  'leat-difference': 1,
  'leat-steady': 1,
  'leat-size': 1,
  'leat-sweep': 1,
  'leat-ensemble': 1,
  'leat-sensitivity': 1,
  'leat-forecast': 1,
  'leat-backtest': 1,
  'leat-log': 1,
  'leat-log-guess': 1,
  'leat-numbers': 1,
} as const;

/** The name of a form. */
export type DocumentForm = keyof typeof documentVersions;

/**
 * The text of a document that may be kept: it opens with its schema and the version of that.
 * @param replace what stands for a value that JSON lacks
 */
export function savedDocument(
  schema: DocumentForm,
  document: object,
  replace?: (key: string, value: unknown) => unknown,
): string {
  return `${JSON.stringify({ schema, version: documentVersions[schema], ...document }, replace)}\n`;
}

/** The fault of a document that is of another form or version than asked for; undefined where it is right. */
export function formFault(file: string, document: unknown, schema: DocumentForm): FileError | undefined {
  const form = formProblem(document, schema, documentVersions[schema]);
  return form === undefined
    ? undefined
    : new FileError(`${file}: ${form.problem}; expected ${form.expected}: run it again with this leat`);
}
