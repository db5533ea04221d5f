import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { FileError, reasonOf } from './read.js';

/** What a path leads to: the file behind a link, and whether it is one that can be replaced (a device or a pipe cannot). */
function targetOf(path: string): { readonly target: string; readonly replaceable: boolean } {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return { target: path, replaceable: true };
  const replaceable = there.isFile() || there.isDirectory();
  return { target: replaceable ? realpathSync(path) : path, replaceable };
}

/**
 * Writes a file whole or not at all: beside its place under another name, then renamed into it. What a killed
 * command leaves is the old file or the new one, at most with `FILE.PID.part` beside it, which nothing reads. A device or a
 * pipe (`/dev/stdout`) is written to as it stands. Throws FileError, and leaves what was there before, when it cannot.
 */
export function writeAtomic(path: string, text: string | Uint8Array): void {
  let beside: string | undefined;
  try {
    const { target, replaceable } = targetOf(path);
    if (!replaceable) {
      writeFileSync(path, text);
      return;
    }
    beside = `${target}.${process.pid}.part`;
    writeFileSync(beside, text);
    renameSync(beside, target);
  } catch (error) {
    if (beside !== undefined) rmSync(beside, { force: true });
    throw new FileError(`${path}: cannot be written: ${reasonOf(error)}`);
  }
}
