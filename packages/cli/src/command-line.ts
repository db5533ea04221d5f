import { CommanderError } from 'commander';
import { exit, type ExitCode } from './exit.js';
import { program } from './program.js';
import type { Streams } from './streams.js';

/**
 * Reads the arguments and does what they ask.
 * @returns the exit code
 */
export async function commandLine(args: readonly string[], streams: Streams): Promise<ExitCode> {
  let code: ExitCode = exit.done;
  const leave = (left: ExitCode): void => {
    code = left;
  };
  try {
    await program(streams, leave).parseAsync([...args], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? exit.done : exit.badUsage;
  }
  return code;
}
