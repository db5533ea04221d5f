import { overlayOf, overlayText, type PlainFile } from '../analysis/advice/file-edit.js';
import { openTexts, type ReferencedFiles } from './texts.js';

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
 * The text of a file that includes the one that was read, and says what is changed.
 * @param include how it names that file
 * @param remark lines that stand at its head
 */
export function changedText(
  texts: ReferencedFiles,
  after: PlainFile,
  include: string,
  remark: readonly string[],
): string {
  const overlay = overlayOf(writtenFile(texts), after);
  return `${remark.map((line) => `# ${line}\n`).join('')}include: ${JSON.stringify(include)}\n\n${overlayText(overlay)}`;
}
