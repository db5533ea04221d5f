import { overlayOf, overlayText, type PlainFile } from '@leat/core';
import { dirname, relative, resolve, sep } from 'node:path';
import { FileError } from '../../files/read.js';
import { openTexts, type ReferencedFiles } from './referenced-files.js';

/** The options that change no value of the file: its tables. */
function bareOptions({ options: { tables } }: ReferencedFiles): ReferencedFiles['options'] {
  return { set: [], ...(tables !== undefined && { tables }) };
}

/** What the file itself says, without what options lay over it. */
function writtenFile(texts: ReferencedFiles): PlainFile {
  return openTexts({ ...texts, options: bareOptions(texts) }).reading.resolved.plain;
}

/** The name of a file as one that lies in the folder of another would name it. */
const besideName = (file: string): string => file.slice(file.lastIndexOf('/') + 1);

/** Makes texts of a scenario in which the file says something else: a file that includes it and lies over it. */
export function openChanged(texts: ReferencedFiles): (after: PlainFile) => ReferencedFiles {
  const before = writtenFile(texts);
  const beside = new Map(texts.beside).set(texts.file, texts.text);
  return (after) => ({
    ...texts,
    file: `${texts.file}.changed`,
    text: `include: ${JSON.stringify(besideName(texts.file))}\n${overlayText(overlayOf(before, after))}`,
    beside,
    options: bareOptions(texts),
  });
}

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
  const include = includeName(texts.file, path);
  const overlay = overlayOf(writtenFile(texts), after);
  return `${remark.map((line) => `# ${line}\n`).join('')}include: ${JSON.stringify(include)}\n\n${overlayText(overlay)}`;
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
