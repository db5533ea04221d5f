import { exit } from './exit.js';
import { reasonOf } from '../files/read.js';

/** Where a command writes: the result on one stream, everything else on the other. */
export interface Streams {
  result(text: string): void;
  note(text: string): void;
}

const closedByReader = (error: NodeJS.ErrnoException): boolean => error.code === 'EPIPE';

/** The streams of this process. A reader that closes the pipe (`| head`) ends the command without a word. */
export function processStreams(): Streams {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (closedByReader(error)) process.exit(process.exitCode);
      process.stderr.write(`the result cannot be written: ${reasonOf(error)}\n`);
      process.exit(exit.badInput);
    });
  }
  return {
    result: (text) => process.stdout.write(text),
    note: (text) => process.stderr.write(text),
  };
}
