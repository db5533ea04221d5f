import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));

/** Whether this machine has the `script` of util-linux, which runs a command in a terminal of its own. */
export const hasScript = spawnSync('script', ['--version'], { encoding: 'utf8' }).stdout.includes(
  'util-linux',
);

/** What a person does: waits until a text is seen, then presses keys. */
export type Step = readonly [seen: string, keys: string];

/** What was seen in the end. */
export interface Seen {
  readonly code: number | null;
  readonly text: string;
}

/**
 * Runs the built command in a terminal, where a person presses keys as they see the texts of the steps, in turn, and once more
 * where nothing comes of it.
 */
export function inTerminal(args: readonly string[], folder: string, steps: readonly Step[]): Promise<Seen> {
  const command = [
    'stty cols 200 rows 50 &&',
    ...[process.execPath, main, ...args].map((part) => `'${part}'`),
  ].join(' ');
  return new Promise((resolve, reject) => {
    const child = spawn('script', ['-qefc', command, '/dev/null'], {
      cwd: folder,
      env: { ...process.env, TERM: 'xterm', COLUMNS: '200', CI: '' },
    });
    let text = '';
    let since = '';
    let at = 0;
    // Keys pressed between two questions may be lost: who sees nothing come of them for ten seconds presses again.
    let quiet = true;
    const again = setInterval(() => {
      const last = steps.at(at - 1);
      if (quiet && at > 0 && last !== undefined) child.stdin.write(last[1]);
      quiet = true;
    }, 10_000);
    child.stdout.setEncoding('utf8').on('data', (part: string) => {
      text += part;
      since += part;
      quiet = false;
      const step = steps.at(at);
      if (step === undefined || !since.includes(step[0])) return;
      at += 1;
      since = '';
      child.stdin.write(step[1]);
    });
    child.on('error', (error) => {
      clearInterval(again);
      reject(error);
    });
    child.on('close', (code) => {
      clearInterval(again);
      resolve({ code, text });
    });
  });
}
