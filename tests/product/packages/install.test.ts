import { existsSync, readdirSync, readFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { installed, quiet } from './installed.js';
import { call, emptyFolder } from './packed.js';

const required = process.env['LEAT_CI_TOOLS'] === '1';
const { folder: place, status, said, offline, why } = installed(['core', 'view', 'cli']);

const shipped = 'node_modules/@leat/cli/scenarios';
const demo = ['run', `${shipped}/glasshouse.yaml`, '--days', '20', '--json'];
const logged = [
  `${shipped}/backyard.yaml`,
  '--log',
  `${shipped}/backyard.csv`,
  '--map',
  `${shipped}/backyard.map`,
];

/** What is put out on every Node: a run, its report, a state that lasts, draws and their bands, a fit. */
const calls: readonly (readonly string[])[] = [
  demo,
  ['report', demo[1], '--days', '20', '--out', 'page.html'],
  ['steady', demo[1], '--json'],
  ['ensemble', `${shipped}/backyard.yaml`, '--days', '20', '--members', '6', '--json'],
  ['fit', ...logged, '--until', '2026-03-20', '--starts', '1', '--free', 'start.nitrate', '--json'],
];

describe('all packages in an empty folder', () => {
  it(`are installed by npm from their tarballs${why}`, () => {
    expect(offline && !required ? 0 : status, said).toBe(0);
  });

  it.skipIf(offline)('run the demo by npx', () => {
    const { status, stdout, stderr } = call('npx', ['--no', 'leat', ...demo.slice(0, 4)], place);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^Invented teaching glasshouse/);
    expect(call('npx', ['--no', 'leat', '--version'], place).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  it.skipIf(offline)('start from one script, keep its code, and say the same as from many modules', () => {
    const dist = join(place, 'node_modules/@leat/cli/dist');
    const bundle = join(dist, 'bundle');
    const kept = (): readonly string[] => readdirSync(bundle).filter((each) => each.endsWith('.cache'));
    const said = (args: readonly string[]) => {
      const { status, stdout, stderr } = call(process.execPath, [join(dist, 'main.js'), ...args], place);
      return { status, stdout, stderr };
    };
    const asked = [
      demo,
      ['ensemble', ...calls[3].slice(1)],
      ['show', 'limits'],
      ['run', 'none.yaml'],
      ['--help'],
    ];
    const first = asked.map(said);
    expect(kept()).toHaveLength(1);
    const again = asked.map(said);
    renameSync(bundle, `${bundle}-away`);
    const many = asked.map(said);
    renameSync(`${bundle}-away`, bundle);
    expect(again).toEqual(first);
    expect(many).toEqual(first);
    expect(first.map(({ status }) => status)).toEqual([0, 0, 0, 2, 0]);
  });

  for (const major of ['22', '24']) {
    it.skipIf(offline)(`put out the same bytes on Node ${major} as on this one`, (context) => {
      const there = emptyFolder();
      const got = call('npm', ['install', '--prefer-offline', ...quiet, `node@${major}`], there);
      const node = join(there, 'node_modules/node/bin/node');
      if (!existsSync(node) && !required) context.skip(`no Node ${major} to be had: ${got.stderr}`);
      expect(got.status, got.stderr).toBe(0);
      expect(call(node, ['--version'], place).stdout).toMatch(new RegExp(`^v${major}\\.`));
      const main = join(place, 'node_modules/@leat/cli/dist/main.js');
      for (const args of calls) {
        // The page takes the place of the last one, which Leat made itself.
        const [here, other] = [process.execPath, node].map((by) => {
          const { status, stdout, stderr } = call(by, [main, ...args], place);
          const page = args.includes('--out') ? readFileSync(join(place, 'page.html'), 'utf8') : '';
          return { status, stderr, said: stdout + page };
        });
        expect([here.status, here.said.length > 1000], here.stderr).toEqual([0, true]);
        expect([other.status, other.stderr]).toEqual([0, here.stderr]);
        expect(other.said === here.said, `${args[0]} is not the same bytes`).toBe(true);
      }
    });
  }
});
