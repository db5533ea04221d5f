import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { openOutputList, type Output } from '../../files/outputs.js';
import { readText } from '../../files/read.js';
import { schemaName, schemaPath, schemaReference } from '../../files/shipped.js';
import { linesText } from '../../terminal/columns.js';
import type { Streams } from '../../terminal/streams.js';

/** A file to write. */
export interface Copy {
  readonly to: string;
  readonly text: string;
}

/** A system file under the line by which editors find its schema. */
export const withSchema = (text: string): string =>
  `# yaml-language-server: $schema=${schemaReference}\n${text}`;

/** A file without the line of its schema. */
const bare = (text: string): string => text.replace(/^# yaml-language-server: .*\n/, '');

/** Whether a file is there already, word for word but for the line of its schema. */
const isThere = ({ to, text }: Copy): boolean =>
  existsSync(to) && bare(readFileSync(to, 'utf8')) === bare(text);

/** Places that are looked at before anything is asked or written. */
export interface Places {
  /** Writes them. Throws FileError where one was taken meanwhile. */
  write(texts: readonly string[]): void;
  readonly paths: readonly string[];
}

/**
 * Decides on new files and the schema beside the first of them, which is left alone where it is there word for word, and
 * written anew where another Leat made it. Throws FileError with every place that is taken.
 */
export function openPlaces(paths: readonly string[], { force }: { readonly force?: boolean }): Places {
  const beside: Copy = { to: join(dirname(paths[0]), schemaName), text: readText(schemaPath) };
  // A folder that is missing is told of the file that was asked for, once.
  const needed = existsSync(dirname(paths[0])) && !isThere(beside);
  const outputs: readonly Output[] = openOutputList(
    [
      ...paths.map((path) => ({ option: '--out', path, kind: 'own' as const })),
      ...(needed ? [{ option: '--out', path: beside.to, kind: 'schema' as const }] : []),
    ],
    { ...(force !== undefined && { force }) },
  );
  return {
    paths: outputs.map(({ path }) => path),
    write(texts) {
      [...texts, beside.text].slice(0, outputs.length).forEach((text, i) => {
        outputs[i].write(text);
      });
    },
  };
}

/** Writes files, those left out that are there word for word but for the last, which is what was asked for. */
export function writeCopies(copies: readonly Copy[], force: boolean | undefined, streams: Streams): void {
  const writing = copies.filter((copy, i) => i === copies.length - 1 || !isThere(copy));
  const places = openPlaces(
    writing.map(({ to }) => to),
    { ...(force !== undefined && { force }) },
  );
  places.write(writing.map(({ text }) => text));
  streams.note(linesText([`written: ${places.paths.join(', ')}`]));
}
