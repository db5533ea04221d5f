import { realpathSync, statSync } from 'node:fs';
import { dirname, relative, resolve, sep, isAbsolute } from 'node:path';
import { FileError, reasonOf } from './read.js';
import { readText } from './read.js';

/** Largest file that another file names, bytes. */
const mostBytes = 16 * 2 ** 20;

function isWithin(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** Where a path leads once links are followed; the path itself where nothing is there. */
function realOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}

/**
 * Opens what files name: only plain files in the folder of the files that a person named, in folders below it, and in
 * those that are allowed, links followed. What a person typed in an option (`--set`, `--tables`) is read wherever it lies.
 * @param files what was named on the command line
 * @param allowed folders of `--allow-path`
 * @returns reads the text at a path; throws FileError with the reason alone
 */
export function openBeside(
  files: readonly string[],
  allowed: readonly string[] = [],
): (path: string, from: string) => string {
  const folders = [...files.map((file) => dirname(resolve(file))), ...allowed].map(realOf);
  const lexical = files.map((file) => dirname(resolve(file)));
  return (path, from) => {
    if (from.startsWith('--')) return readText(path);
    const real = realOf(path);
    const missing = real === resolve(path) && lexical.some((folder) => isWithin(folder, real));
    if (!folders.some((folder) => isWithin(folder, real)) && !missing)
      throw new FileError(
        `it lies outside the folder of ${files.join(' and ')}; --allow-path <folder> lets a file name what lies there`,
      );
    let plain: boolean;
    try {
      plain = statSync(real).isFile();
    } catch (error) {
      throw new FileError(reasonOf(error));
    }
    if (!plain) throw new FileError('it is no plain file');
    return readText(real, mostBytes);
  };
}
