import { FileError, reasonOf } from './file-error.js';
import { readText } from './read-text.js';

/** Text of a file that was named on the command line. Throws FileError. */
export function textOf(file: string): string {
  try {
    return readText(file);
  } catch (error) {
    throw new FileError(`${file}: cannot be read: ${reasonOf(error)}`);
  }
}
