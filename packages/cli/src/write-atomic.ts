import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { FileError, reasonOf } from './file-error.js';

/**
 * Writes a file whole or not at all: beside its place under another name, then renamed into it. Throws
 * FileError, and leaves what was there before, when it cannot.
 */
export function writeAtomic(path: string, text: string | Uint8Array): void {
  const beside = `${path}.${process.pid}.part`;
  try {
    writeFileSync(beside, text);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new FileError(`${path}: cannot be written: ${reasonOf(error)}`);
  }
}
