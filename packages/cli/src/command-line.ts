import { CommanderError } from 'commander';
import { forgetFiles } from './files/read.js';
import { visible } from '@leat/view/text';
import { program } from './program.js';
import { exit, type ExitCode } from './terminal/exit.js';
import { safeStreams } from './terminal/safe-streams.js';
import type { Streams } from './terminal/streams.js';

/** What to say of an error, and the code to leave with. */
export interface Explanation {
  readonly text: string;
  readonly code: ExitCode;
}

const named = (error: unknown, name: string): error is Error => error instanceof Error && error.name === name;

/**
 * Puts an error in words. Bad input says each fault on a line; a fault of ours says what it was, and its
 * stack only where LEAT_DEBUG=1. Errors are told by name, so that the library need not be loaded.
 */
export function explain(error: unknown, debug: boolean): Explanation {
  if (named(error, 'InputError') || named(error, 'FileError')) {
    return { text: visible(error.message), code: exit.badInput };
  }
  const message = error instanceof Error ? error.message : String(error);
  const stack = debug && error instanceof Error && error.stack !== undefined ? `\n${error.stack}` : '';
  const hint = debug
    ? ''
    : '\nThis is a fault of leat, not of your file. LEAT_DEBUG=1 shows where it happened.';
  return { text: visible(`leat: ${message}${hint}${stack}`), code: exit.ourBug };
}

/**
 * Reads the arguments and does what they ask.
 * @returns the exit code
 */
export async function commandLine(args: readonly string[], streams: Streams): Promise<ExitCode> {
  forgetFiles();
  let code: ExitCode = exit.done;
  const leave = (left: ExitCode): void => {
    code = left;
  };
  try {
    await program(safeStreams(streams, process.stdout.isTTY), leave).parseAsync([...args], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? exit.done : exit.badUsage;
  }
  return code;
}
