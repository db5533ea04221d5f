import {
  accessSync,
  chmodSync,
  constants,
  fstatSync,
  lstatSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { FileError, identityOf, reasonOf } from './read.js';

/** What a path leads to. */
export interface Place {
  /** The path with every link followed. */
  readonly target: string;
  /** Whether something is there. */
  readonly there: boolean;
  /** Which file it is, or would be, whatever it is called; undefined for a device or a pipe, which loses nothing. */
  readonly identity?: string;
  /** Standard output or standard error of this process. */
  readonly stream?: 1 | 2;
}

/** Names of the streams of this process. */
const streams: Readonly<Record<string, 1 | 2>> = {
  '-': 1,
  ...{ '/dev/stdout': 1, '/dev/fd/1': 1, '/proc/self/fd/1': 1 },
  ...{ '/dev/stderr': 2, '/dev/fd/2': 2, '/proc/self/fd/2': 2 },
};

/** Where a file would come to be that is not there yet: a link is followed also to where nothing is. */
function newPlace(path: string): string {
  const folder = realpathSync(dirname(resolve(path)));
  const inFolder = join(folder, basename(path));
  if (lstatSync(inFolder, { throwIfNoEntry: false })?.isSymbolicLink() !== true) return inFolder;
  return newPlace(resolve(folder, readlinkSync(inFolder)));
}

/**
 * Follows a path that is to be written, `-` being standard output. Throws a system error, or FileError with the reason
 * alone, where nothing can be written there.
 */
export function placeOf(path: string): Place {
  const stream = Object.hasOwn(streams, path) ? streams[path] : undefined;
  if (stream !== undefined) return { target: path === '-' ? '/dev/stdout' : path, there: true, stream };
  const stats = statSync(path, { bigint: true, throwIfNoEntry: false });
  if (stats?.isDirectory() === true || /[/\\]$/.test(path)) throw new FileError('it is a folder');
  if (stats !== undefined && !stats.isFile()) return { target: path, there: true };
  const target = stats === undefined ? newPlace(path) : realpathSync(path);
  accessSync(dirname(target), constants.W_OK);
  if (stats === undefined) return { target, there: false, identity: target };
  accessSync(target, constants.W_OK);
  return { target, there: true, identity: identityOf(stats) };
}

/** Writes to a stream of this process: to a file behind it at the place where the stream is. */
function writeStream(stream: 1 | 2, target: string, data: string | Uint8Array): void {
  writeFileSync(fstatSync(stream, { bigint: true }).isFile() ? stream : target, data);
}

/**
 * Writes a file whole or not at all: beside its place under another name, then renamed into it. What a killed
 * command leaves is the old file or the new one, at most with `FILE.PID.part` beside it, which nothing reads. A link stays
 * a link, and a file keeps who may read it. A device or a pipe (`/dev/stdout`, `-`) is written to as it stands. Throws
 * FileError, and leaves what was there before, when it cannot.
 */
export function writeAtomic(path: string, data: string | Uint8Array): void {
  let beside: string | undefined;
  try {
    const { target, there, identity, stream } = placeOf(path);
    if (stream !== undefined) {
      writeStream(stream, target, data);
    } else if (identity === undefined) {
      writeFileSync(target, data);
    } else {
      const mode = there ? statSync(target).mode & 0o7777 : undefined;
      beside = `${target}.${process.pid}.part`;
      writeFileSync(beside, data, mode === undefined ? {} : { mode });
      if (mode !== undefined) chmodSync(beside, mode);
      renameSync(beside, target);
    }
  } catch (error) {
    if (beside !== undefined) rmSync(beside, { force: true });
    throw new FileError(`${path}: cannot be written: ${reasonOf(error)}`);
  }
}
