import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, it } from 'vitest';
import { ratio } from './support/kept.js';

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
const demo = fileURLToPath(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));

/** Least time of a whole process, ms by the clock. */
function processTime(args: readonly string[]): number {
  const times = Array.from({ length: 7 }, () => {
    const from = performance.now();
    execFileSync(process.execPath, args, { stdio: 'ignore' });
    return performance.now() - from;
  });
  return Math.min(...times);
}

describe('whole processes', () => {
  it('against one that does nothing', () => {
    const nothing = processTime(['-e', '0']);
    const run = processTime([main, 'run', demo]);
    const help = processTime([main, '--help']);
    console.log(
      `\n  ms by the clock: node -e 0 ${nothing.toFixed(0)}, leat --help ${help.toFixed(0)}, leat run ${run.toFixed(0)}`,
    );
    ratio('leat run of the demo against node -e 0', run / nothing, 5);
    ratio('leat --help against node -e 0', help / nothing);
  });
});
