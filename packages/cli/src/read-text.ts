import { readFileSync } from 'node:fs';
import { FileError, reasonOf } from './file-error.js';

/** Text of a file. Throws FileError with the reason alone: the caller knows which file it asked for. */
export function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new FileError(reasonOf(error));
  }
}
