import { sealed, type TextHash } from '@leat/core';

/** The forms of the documents that `--json` prints; each has its own version, which changes with its form. */
export const documentVersions = {
  'leat-run': 1,
  'leat-advice': 1,
  'leat-comparison': 1,
  'leat-difference': 1,
  'leat-steady': 1,
  'leat-plan': 1,
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

/** The text of a document with the hash of all of it as its last key: what `sealed` of the library makes, from its text. */
export const sealedText = (text: string, hash: TextHash): string =>
  `${text.slice(0, -1)},"hash":"${hash(text)}"}`;

/**
 * The text of a document that may be kept: it opens with its schema and the version of that, and ends with the hash of all
 * of it.
 * @param hash SHA-256, where there is one quicker than the library's
 * @param replace what stands for a value that JSON lacks
 */
export function savedText(
  schema: DocumentForm,
  document: object,
  hash?: TextHash,
  replace?: (key: string, value: unknown) => unknown,
): string {
  const text = JSON.stringify({ schema, version: documentVersions[schema], ...document }, replace);
  if (hash === undefined) return `${JSON.stringify(sealed(JSON.parse(text) as object))}\n`;
  return `${sealedText(text, hash)}\n`;
}
