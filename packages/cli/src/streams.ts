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
      if (!closedByReader(error)) throw error;
      process.exit(process.exitCode);
    });
  }
  return {
    result: (text) => process.stdout.write(text),
    note: (text) => process.stderr.write(text),
  };
}
