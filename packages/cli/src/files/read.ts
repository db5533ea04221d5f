import { oneLine } from '@leat/view/text';
import { type BigIntStats, closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** A file that could not be read or written, in words for the person who named it: a line for each fault. */
export class FileError extends Error {
  override readonly name = 'FileError';
  constructor(faults: string | readonly string[]) {
    super((typeof faults === 'string' ? [faults] : faults).map(oneLine).join('\n'));
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EISDIR: 'it is a folder',
  ENOTEMPTY: 'it is a folder',
  EBUSY: 'it is in use, or a folder',
  ENOTDIR: 'part of the path is not a folder',
  EFBIG: 'it would be larger than files may be here',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links go round in a circle',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
};

/** The reason in a system error, in plain words where they are known. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  if (code === 'ERR_INVALID_ARG_VALUE' && error.message.includes('null bytes'))
    return 'the name holds a NUL, which no name of a file can';
  return reasons[code] ?? error.message;
}

/** Which file it is, whatever it is called. */
export const identityOf = ({ dev, ino }: Pick<BigIntStats, 'dev' | 'ino'>): string => `${dev}:${ino}`;

/** Every file that this call of the command read, by its identity, under the name by which it was read first. */
const read = new Map<string, string>();

/** The files that this call of the command read, by their identity, each under the name by which it was read first. */
export const filesRead = (): ReadonlyMap<string, string> => read;

/** A new call of the command begins: it has read nothing. */
export function forgetFiles(): void {
  read.clear();
}

/** The files to which the streams of this process go, by their identity; a terminal and a pipe are none. */
export function streamFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const [stream, name] of [
    [2, 'what is said beside the result'],
    [1, 'the result'],
  ] as const) {
    try {
      const stats = fstatSync(stream, { bigint: true });
      if (stats.isFile()) files.set(identityOf(stats), name);
    } catch {
      // A stream that is closed goes to no file.
    }
  }
  return files;
}

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
    const stats = fstatSync(file, { bigint: true });
    if (stats.size > most) throw tooLarge();
    if (stats.isFile()) {
      const identity = identityOf(stats);
      const stream = streamFiles().get(identity);
      if (stream !== undefined) throw new FileError(`it is where ${stream} goes`);
      if (!read.has(identity)) read.set(identity, path);
    }
    const pieces: Buffer[] = [];
    let length = 0;
    for (;;) {
      const next = Buffer.allocUnsafe(piece);
      const count = readSync(file, next, 0, piece, null);
      if (count === 0) return Buffer.concat(pieces);
      length += count;
      if (length > most) throw tooLarge();
      pieces.push(next.subarray(0, count));
    }
  } catch (error) {
    throw error instanceof FileError ? error : new FileError(reasonOf(error));
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** The line on which the bytes cease to be UTF-8. */
function brokenLine(bytes: Buffer): number {
  let line = 1;
  for (let from = 0; ; line += 1) {
    const end = bytes.indexOf(10, from);
    try {
      utf8.decode(bytes.subarray(from, end < 0 ? bytes.length : end));
    } catch {
      return line;
    }
    if (end < 0) return line;
    from = end + 1;
  }
}

/**
 * Text of a file in UTF-8, without a byte order mark. Throws FileError with the reason alone: the caller knows which
 * file it asked for.
 */
export function readText(path: string, most?: number): string {
  const bytes = readBytes(path, most);
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    throw new FileError('it is UTF-16: save it as UTF-8');
  if (bytes.includes(0)) throw new FileError('it is no text');
  try {
    return utf8.decode(bytes);
  } catch {
    throw new FileError(`line ${brokenLine(bytes)} is not UTF-8: save the file as UTF-8`);
  }
}

/** Text of a file that was named on the command line. Throws FileError. */
export function textOf(file: string, most?: number): string {
  try {
    return readText(file, most);
  } catch (error) {
    throw new FileError(`${file}: cannot be read: ${reasonOf(error)}`);
  }
}
