import type { PlainFile } from '@leat/core';
import { changedText as textFor, type ReferencedFiles } from '@leat/core/tasks';
import { dirname, relative, resolve, sep } from 'node:path';
import { FileError } from '../../files/read.js';

/**
 * The text of a file that may be kept at `path`: it includes that which was read, and says what is changed.
 * @param remark lines that stand at its head
 * @throws FileError where the file to be included lies outside the folder of the path, from which it could not be read
 */
export function changedText(
  texts: ReferencedFiles,
  after: PlainFile,
  path: string,
  remark: readonly string[],
): string {
  return textFor(texts, after, includeName(texts.file, path), remark);
}

/** How a file that is kept at `path` names another; throws FileError where it could not read that. */
export function includeName(file: string, path: string): string {
  const way = relative(dirname(resolve(path)), resolve(file));
  if (way.startsWith('..') || resolve(way) === way)
    throw new FileError(
      `${path}: --save: lies where it cannot include ${file}; expected a name in the folder of that file`,
    );
  return way.split(sep).join('/');
}
