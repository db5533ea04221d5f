import { fileURLToPath } from 'node:url';
import { describe, it } from 'vitest';
import { ratio } from './support/kept.js';
import { wholeProcess } from './support/whole-process.js';

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
const demo = fileURLToPath(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));

/** Least of a few whole processes, ms: of all processors together, and by the clock. */
function processTime(args: readonly string[]): { readonly processor: number; readonly wall: number } {
  const taken = Array.from({ length: 5 }, () => wholeProcess(args));
  const least = (of: 'processor' | 'wall'): number => Math.min(...taken.map((each) => each[of]));
  return { processor: least('processor'), wall: least('wall') };
}

describe('whole processes', () => {
  it('against one that does nothing', () => {
    const nothing = processTime(['-e', '0']);
    const run = processTime([main, 'run', demo]);
    const help = processTime([main, '--help']);
    for (const [name, { processor, wall }] of Object.entries({ nothing, help, run }))
      console.log(
        `  ${name}: ${processor.toFixed(0)} ms of all processors, ${wall.toFixed(0)} ms by the clock`,
      );
    ratio('leat run of the demo against node -e 0', run.processor / nothing.processor, 5);
    ratio('leat --help against node -e 0', help.processor / nothing.processor);
  });
});
