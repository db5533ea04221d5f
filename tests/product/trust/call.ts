import { chdir, cwd } from 'node:process';
import { commandLine } from '../../../packages/cli/src/command-line.js';
import { explain } from '../../../packages/cli/src/command-line.js';

/** What a command gave, run in this process: its code, its result, and what it said beside. */
export interface Called {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in a folder as `main.ts` does, without starting a process. */
export async function call(args: readonly string[], folder: string): Promise<Called> {
  const before = cwd();
  let out = '';
  let err = '';
  const streams = {
    result: (text: string): void => {
      out += text;
    },
    note: (text: string): void => {
      err += text;
    },
  };
  chdir(folder);
  try {
    const code = await commandLine(args, streams);
    return { code, out, err };
  } catch (error) {
    const { text, code } = explain(error, false);
    return { code, out, err: `${err}${text}\n` };
  } finally {
    chdir(before);
  }
}
