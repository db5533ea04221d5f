import { type BigIntStats, fstatSync, readSync, statSync, writeSync } from 'node:fs';
import { exit } from './exit.js';
import { FileError, reasonOf } from '../files/read.js';

/** Where a command writes: the result on one stream, everything else on the other. */
export interface Streams {
  result(text: string): void;
  note(text: string): void;
}

/**
 * What standard output is. In big integers: the realpath of Node 20, by which it finds packages, reads what the last call in
 * plain numbers left behind, and takes a pipe asked about here for the end of a path.
 */
const outputStats = (): BigIntStats => fstatSync(1, { bigint: true });

const closedByReader = (error: NodeJS.ErrnoException): boolean => error.code === 'EPIPE';

/**
 * Whether standard output was closed when the process began (`>&-`). Node puts the null device in its place, open for reading
 * too; who wants no output (`> /dev/null`) opens it for writing alone, and from that nothing can be read.
 */
function closedFromTheStart(): boolean {
  try {
    const stats = outputStats();
    if (stats.rdev !== statSync('/dev/null', { bigint: true }).rdev || !stats.isCharacterDevice())
      return false;
    readSync(1, new Uint8Array(1));
    return true;
  } catch {
    return false;
  }
}

function goesToFile(): boolean {
  try {
    return outputStats().isFile();
  } catch {
    return false;
  }
}

/**
 * Writes all of a text to the file that standard output is. Node's own stream takes a write that was cut short, at the end of the
 * disk or of what a file may hold, for a whole one.
 */
function writeWhole(text: string): void {
  const bytes = Buffer.from(text);
  try {
    for (let at = 0; at < bytes.length;) at += writeSync(1, bytes, at);
  } catch (error) {
    throw new FileError(`the result cannot be written: ${reasonOf(error)}`);
  }
}

/** The streams of this process. A reader that closes the pipe (`| head`) ends the command without a word. */
export function processStreams(): Streams {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (closedByReader(error)) process.exit(process.exitCode);
      process.stderr.write(`the result cannot be written: ${reasonOf(error)}\n`);
      process.exit(exit.badInput);
    });
  }
  // A file that grows beyond what the shell allows is an error of writing, not the end of the process.
  if (process.platform !== 'win32') process.on('SIGXFSZ', () => undefined);
  let closed: boolean | undefined;
  const write = goesToFile() ? writeWhole : (text: string) => process.stdout.write(text);
  return {
    result: (text) => {
      closed ??= closedFromTheStart();
      if (closed)
        throw new FileError(
          'the result cannot be written: standard output is closed (where no output is wanted: > /dev/null)',
        );
      write(text);
    },
    note: (text) => process.stderr.write(text),
  };
}
