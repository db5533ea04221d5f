import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { extension, InputError, type Extension } from '@leat/core';
import type { ReferencedFiles } from '@leat/core/tasks';
import { FileError, textOf } from './read.js';

/**
 * Components, processes and numbers of a user's own, from the module that they wrote: what it exports as `default`. Its code
 * is run. Throws FileError where it cannot be run and InputError where it exports something else.
 */
async function loadExtension(path: string): Promise<Extension> {
  let loaded: { readonly default?: unknown };
  try {
    loaded = (await import(pathToFileURL(path).href)) as typeof loaded;
  } catch (error) {
    throw new FileError(
      `${path}: could not be run: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
  const own = inFile(path, () => extension(loaded.default as Parameters<typeof extension>[0]));
  return { ...own, check: (scenario, given) => inFile(path, () => own.check(scenario, given)) };
}

/** Whether an error is of bad input: by its name, for the module of a user may have a copy of the library of its own. */
const isInputError = (error: unknown): error is InputError =>
  error instanceof Error && error.name === 'InputError' && 'faults' in error;

/** What a check of an extension gives; its faults, and a row that does not close, are told of the file. */
function inFile<T>(file: string, check: () => T): T {
  try {
    return check();
  } catch (error) {
    if (isInputError(error)) throw new InputError(error.faults.map((fault) => ({ file, ...fault })));
    if (error instanceof RangeError) throw new InputError([{ file, problem: error.message }]);
    throw error;
  }
}

/** What to say of code that is run for a system. */
export const extensionNote = (
  path: string,
  { extension: { components, processes, numbers } }: LoadedExtension,
): string =>
  `${path}: its code is run, with all that you may do on this machine: ` +
  `${processes.length} processes, ${components.length} components, ${numbers.length} numbers of your own`;

/** A module of the user's own that was run: where it stands, its text, and what it gave. */
export interface LoadedExtension {
  /** Absolute path. */
  readonly file: string;
  readonly text: string;
  readonly extension: Extension;
}

/** Runs a module of the user's own. Throws as `loadExtension` does. */
export async function openExtension(path: string): Promise<LoadedExtension> {
  const extension = await loadExtension(path);
  return { file: resolve(path), text: textOf(path), extension };
}

/** What a worker is sent, texts of a scenario among it. */
type Texts = Pick<ReferencedFiles, 'extend' | 'extension'>;

const textsIn = (shared: unknown): Texts | undefined =>
  typeof shared === 'object' && shared !== null && 'texts' in shared ? (shared.texts as Texts) : undefined;

/** What a worker is to be sent without the functions of the user's own, which cannot be sent. */
export function withoutCode<Shared>(shared: Shared): Shared {
  const texts = textsIn(shared);
  if (texts?.extension === undefined) return shared;
  return {
    ...shared,
    texts: Object.fromEntries(Object.entries(texts).filter(([key]) => key !== 'extension')),
  };
}

/** What a worker was sent, with the functions of the user's own loaded anew. Throws as `loadExtension` does. */
export async function withCode(shared: unknown): Promise<unknown> {
  const texts = textsIn(shared);
  if (texts?.extend === undefined) return shared;
  return { ...(shared as object), texts: { ...texts, extension: await loadExtension(texts.extend.file) } };
}
