import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { figure, ratio } from './support/kept.js';
import { medianOf } from './support/median.js';
import { wholeProcess, type Taken } from './support/whole-process.js';

const dist = fileURLToPath(new URL('../../packages/cli/dist', import.meta.url));
const main = join(dist, 'main.js');
const demo = fileURLToPath(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));
const ROUNDS = 5;

/** The command as it is installed, out of one script, in a folder of its own. */
function installedCommand(folder: string): string {
  const make = `await (await import(${JSON.stringify(new URL('../../.tools/bundle.mjs', import.meta.url).href)})).bundle()`;
  execFileSync(process.execPath, ['--input-type=module', '-e', make], { stdio: 'inherit' });
  const cli = join(folder, 'node_modules/@leat/cli');
  cpSync(dist, join(cli, 'dist'), { recursive: true });
  cpSync(join(dist, '../package.json'), join(cli, 'package.json'));
  return join(cli, 'dist/main.js');
}

describe('whole processes', () => {
  it('against one that does nothing', () => {
    const folder = mkdtempSync(join(tmpdir(), 'leat-bench-'));
    const installed = installedCommand(folder);
    const calls = {
      ...{ nothing: ['-e', '0'], help: [main, '--help'], installedHelp: [installed, '--help'] },
      ...{ run: [main, 'run', demo], installedRun: [installed, 'run', demo] },
    } as const;
    // The first run keeps the code of the script.
    wholeProcess(calls.installedRun);
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
    ratio('leat --help, installed, against node -e 0', against('installedHelp'));
    ratio(
      'leat run, installed, against leat run from the source tree',
      medianOf(rounds.map((each) => each.installedRun.processor / each.run.processor)),
    );
    // Compiling by V8 is slowed otherwise by a busy machine than the start of Node.
    figure('leat run of 180 days, installed, against node -e 0', against('installedRun'), '', 6);
    figure('leat run of 180 days from the source tree against node -e 0', against('run'));
    rmSync(folder, { recursive: true });
  });
});
