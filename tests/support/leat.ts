import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { constants, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type * as CommandLine from '../../packages/cli/src/command-line.js';
import { smallSystem } from './small-text.js';

const built = new URL('../../packages/cli/dist/', import.meta.url);

/** The built command. */
const leatPath = fileURLToPath(new URL('main.js', built));

// The build and not the source: workers are started from files, and what is loaded is what people have.
const { commandLine, explain } = (await import(new URL('command-line.js', built).href)) as typeof CommandLine;

/** What a call of the command gave: its code, its result, and what it said beside. */
export interface Call {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

let last: Promise<unknown> = Promise.resolve();

/**
 * Runs the built command in a folder as `main.ts` does, in this process: starting one costs half a second. One call
 * at a time, since a process is in one folder; calls made together wait for each other.
 */
export function leat(args: readonly string[], folder: string): Promise<Call> {
  const call = last.then(() => callIn(args, folder));
  last = call;
  return call;
}

async function callIn(args: readonly string[], folder: string): Promise<Call> {
  const before = process.cwd();
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
  process.chdir(folder);
  try {
    const code = await commandLine(args, streams);
    return { code, out, err };
  } catch (error) {
    const { text, code } = explain(error, false);
    return { code, out, err: `${err}${text}\n` };
  } finally {
    process.chdir(before);
  }
}

/** Runs the built command in a folder as a process of its own: for what only a process has, and slow. */
export function leatProcess(
  args: readonly string[],
  folder: string,
  environment: NodeJS.ProcessEnv = {},
): Call {
  const { status, stdout, stderr } = spawnSync(process.execPath, [leatPath, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, ...environment },
    maxBuffer: 2 ** 28,
  });
  return { code: status, out: stdout, err: stderr };
}

/** Loaded before the command, it signals itself. */
const signalsItself = new URL('signals-itself.mjs', import.meta.url).href;

/**
 * Runs the built command in a folder as a process that sends itself a signal in a known state (see `signals-itself.mjs`).
 * The code is that of the command, or 128 and the number of the signal that ended it, as a shell says it.
 */
export function leatSignalled(
  args: readonly string[],
  folder: string,
  signal: 'SIGINT' | 'SIGTERM' | 'SIGKILL',
  at: string,
): Call {
  const {
    status,
    signal: by,
    stdout,
    stderr,
  } = spawnSync(process.execPath, ['--import', signalsItself, leatPath, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, LEAT_SIGNAL: signal, LEAT_SIGNAL_AT: at },
    maxBuffer: 2 ** 28,
  });
  return { code: by === null ? status : 128 + constants.signals[by], out: stdout, err: stderr };
}

/** Runs a shell line in a folder, `$LEAT` standing for the command. */
export function shell(line: string, folder: string): Call {
  const { status, stdout, stderr } = spawnSync('bash', ['-c', line], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, LEAT: `${process.execPath} ${leatPath}` },
  });
  return { code: status, out: stdout, err: stderr };
}

/** A new folder that holds `small.yaml` (or another text under that name) and the files given, by path. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'leat-'));
  for (const [name, text] of Object.entries({ 'small.yaml': smallSystem, ...files })) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
