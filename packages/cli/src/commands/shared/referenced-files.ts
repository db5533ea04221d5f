import { type ExtendedReading, type ExtendedScenario, readFit } from '@leat/core';
import { openWith, type ReferencedFiles, type TextOptions } from '@leat/core/tasks';
import { openBeside } from '../../files/open-beside.js';
import type { LoadedExtension } from '../../files/extension.js';
import { textOf } from '../../files/read.js';

/** Options of every command that reads a scenario. */
export interface ScenarioOptions extends TextOptions {
  /** Folders beside that of the file from which the file may name others. */
  readonly allowPath?: readonly string[];
  /** Fit whose numbers stand in place of the file's and of the tables'; `--set` wins over it. */
  readonly fit?: string;
  /** Components and processes of the user's own: `program` loads their module before the command begins. */
  readonly extend?: LoadedExtension;
}

/**
 * Reads a scenario file, what it includes (seen from its own folder), and what the options put over it. Throws
 * FileError where a file cannot be read and InputError with every fault in it.
 */
function openFile(
  file: string,
  { fit, allowPath, extend, ...options }: ScenarioOptions,
): { readonly texts: ReferencedFiles; readonly opened: ExtendedScenario } {
  const beside = new Map<string, string>();
  const openNext = openBeside([file], allowPath);
  const { set, tables, days, every } = options;
  const fitted = fit === undefined ? {} : { fitted: { file: fit, fit: readFit(textOf(fit), fit) } };
  const texts = {
    ...{ file, text: textOf(file), beside },
    ...fitted,
    ...(extend !== undefined && {
      extend: { file: extend.file, text: extend.text },
      extension: extend.extension,
    }),
    options: {
      set,
      ...(tables === undefined ? {} : { tables }),
      ...(days === undefined ? {} : { days }),
      ...(every === undefined ? {} : { every }),
    },
  };
  const load = (path: string, from: string): string => {
    const read = openNext(path, from);
    beside.set(path, read);
    return read;
  };
  return { texts, opened: openWith(texts, load) };
}

/** The texts of a scenario that was found sound; throws as `openFile` does. */
export const readTexts = (file: string, options: ScenarioOptions): ReferencedFiles =>
  openFile(file, options).texts;

/** The reading of a scenario file; throws as `openFile` does. */
export const openScenario = (file: string, options: ScenarioOptions): ExtendedReading =>
  openFile(file, options).opened.reading;
