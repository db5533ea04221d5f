import { pathToFileURL } from 'node:url';
import { extendedBy, extension, InputError, type ExtendedScenario, type Extension } from '@leat/core';
import { FileError } from '../../files/read.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';

/**
 * Components, processes and numbers of a user's own, from the module that they wrote: what it exports as `default`. Its code
 * is run. Throws FileError where it cannot be run and InputError where it exports something else.
 */
export async function loadExtension(path: string): Promise<Extension> {
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

/** What a check of an extension gives; its faults, and a row that does not close, are told of the file. */
function inFile<T>(file: string, check: () => T): T {
  try {
    return check();
  } catch (error) {
    if (error instanceof InputError) throw new InputError(error.faults.map((fault) => ({ file, ...fault })));
    if (error instanceof RangeError) throw new InputError([{ file, problem: error.message }]);
    throw error;
  }
}

/** What to say of code that is run for a system. */
export const extensionNote = (path: string, { components, processes, numbers }: Extension): string =>
  `${path}: its code is run, with all that you may do on this machine: ` +
  `${processes.length} processes, ${components.length} components, ${numbers.length} numbers of your own`;

/** Opens a scenario from its texts, with the components and processes of the user's own that were named beside it. */
export async function openExtended(texts: ReferencedFiles): Promise<ExtendedScenario> {
  const opened = openTexts(texts);
  return texts.extend === undefined ? opened : extendedBy(opened, await loadExtension(texts.extend));
}
