import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { smallSystem } from '../../support/small-text.js';

/** The built command. */
export const leatPath = fileURLToPath(new URL('../../../packages/cli/dist/main.js', import.meta.url));

/** What a call of the command gave. */
export interface Call {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command in a folder. */
export function leat(args: readonly string[], folder: string, environment: NodeJS.ProcessEnv = {}): Call {
  const { status, stdout, stderr } = spawnSync(process.execPath, [leatPath, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, ...environment },
    maxBuffer: 2 ** 28,
  });
  return { code: status, out: stdout, err: stderr };
}

/** A call of the command under way. */
export interface Started {
  /** Ends it by a signal; gives its code and what it said on stderr, in one line of text. */
  readonly stop: (signal: NodeJS.Signals) => Promise<string>;
}

/** Starts the built command in a folder. */
export function startLeat(args: readonly string[], folder: string): Started {
  const child = spawn(process.execPath, [leatPath, ...args], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (data: Buffer) => (said += data.toString()));
  const ended = new Promise<number | null>((resolve) => {
    child.on('exit', (code) => {
      resolve(code);
    });
  });
  return {
    stop: async (signal) => {
      child.kill(signal);
      return `${String(await ended)} ${said}`;
    },
  };
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

/** A new folder that holds `small.yaml` and the files given. */
export function folderWith(files: Readonly<Record<string, string>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'leat-'));
  for (const [name, text] of Object.entries({ 'small.yaml': smallSystem, ...files })) {
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
