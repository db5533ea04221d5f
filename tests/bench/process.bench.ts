import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { figure, ratio } from './support/kept.js';
import { medianOf } from './support/median.js';
import { wholeProcess, type Taken } from './support/whole-process.js';

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
const demo = fileURLToPath(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));
const ROUNDS = 5;

describe('whole processes', () => {
  it('against one that does nothing', () => {
    const calls = { nothing: ['-e', '0'], help: [main, '--help'], run: [main, 'run', demo] } as const;
    type Name = keyof typeof calls;
    const names = Object.keys(calls) as readonly Name[];
    const rounds = Array.from(
      { length: ROUNDS },
      () => Object.fromEntries(names.map((name) => [name, wholeProcess(calls[name])])) as Record<Name, Taken>,
    );
    expect(rounds).toHaveLength(ROUNDS);
    for (const name of names) {
      const of = (what: 'processor' | 'wall'): string =>
        medianOf(rounds.map((each) => each[name][what])).toFixed(0);
      console.log(`  ${name}: ${of('processor')} ms of all processors, ${of('wall')} ms by the clock`);
    }
    const against = (name: Name): number =>
      medianOf(rounds.map((each) => each[name].processor / each.nothing.processor));
    ratio('leat --help against node -e 0', against('help'));
    // Compiling by V8 is slowed otherwise by a busy machine than the start of Node: 14 to 36 were seen of one build.
    figure('leat run of 180 days against node -e 0', against('run'), '', 6);
  });
});
