import { renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { FileError, reasonOf } from './file-error.js';

function isDevice(path: string): boolean {
  const there = statSync(path, { throwIfNoEntry: false });
  return there !== undefined && !there.isFile() && !there.isDirectory();
}

/**
 * Writes a file whole or not at all: beside its place under another name, then renamed into it. A device or a pipe
 * stays what it is and is written to. Throws FileError, and leaves what was there before, when it cannot.
 */
export function writeAtomic(path: string, text: string | Uint8Array): void {
  const beside = `${path}.${process.pid}.part`;
  try {
    if (isDevice(path)) {
      writeFileSync(path, text);
      return;
    }
    writeFileSync(beside, text);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new FileError(`${path}: cannot be written: ${reasonOf(error)}`);
  }
}
