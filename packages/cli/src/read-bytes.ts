import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { FileError, reasonOf } from './file-error.js';

/** Largest file that is read, bytes: a run saved every hour for some years. */
const mostBytes = 64 * 2 ** 20;

const piece = 2 ** 20;

/**
 * Bytes of a file, at most `most` of them; a pipe or a device is read until it ends or the bound is passed. Throws
 * FileError with the reason alone: the caller knows which file it asked for.
 */
export function readBytes(path: string, most = mostBytes): Buffer {
  const tooLarge = (): FileError => new FileError(`larger than ${most / 2 ** 20} MB`);
  let file: number | undefined;
  try {
    file = openSync(path, 'r');
    if (fstatSync(file).size > most) throw tooLarge();
    const pieces: Buffer[] = [];
    let length = 0;
    for (;;) {
      const next = Buffer.allocUnsafe(piece);
      const read = readSync(file, next, 0, piece, null);
      if (read === 0) return Buffer.concat(pieces);
      length += read;
      if (length > most) throw tooLarge();
      pieces.push(next.subarray(0, read));
    }
  } catch (error) {
    throw error instanceof FileError ? error : new FileError(reasonOf(error));
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
