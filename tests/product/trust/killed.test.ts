import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../packages/core/src/base/random.js';
import { folderWith, leat, leatPath } from '../../support/leat.js';

/** How often each command is killed; `KILLS=50` for more. */
const tries = Number(process.env['KILLS'] ?? '1');
const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const of = (name: string): string => join(scenarios, name);
const logged = [of('backyard.yaml'), '--log', of('backyard.csv'), '--map', of('backyard.map')];
const highest = 'highest tan@tank averaged 1 d';
const old = 'what stood here before\n';

/** Every command that writes, with the files that it writes. */
const commands: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ['run', ['run', 'small.yaml', '--csv', 'out.csv', '--save', 'end.json'], ['out.csv', 'end.json']],
  ['report', ['report', 'small.yaml', '--out', 'page.html'], ['page.html']],
  ['plot', ['plot', 'small.yaml', '--of', 'nitrate@sump', '--out', 'course.png'], ['course.png']],
  [
    'sweep',
    [
      ...['sweep', 'small.yaml', '--days', '4', '--vary', 'vessels.filter.surface=5 m2:50 m2:3'],
      ...['--of', highest, '--csv', 'out.csv', '--svg', 'line.svg'],
    ],
    ['out.csv', 'line.svg'],
  ],
  [
    'ensemble',
    [
      ...[
        'ensemble',
        'small.yaml',
        '--days',
        '4',
        '--members',
        '6',
        '--out',
        'kept.ensemble',
        '--csv',
        'out.csv',
      ],
    ],
    ['kept.ensemble', 'out.csv'],
  ],
  [
    'merge',
    ['merge', 'a.ensemble', 'b.ensemble', '--out', 'whole.ensemble', '--csv', 'out.csv'],
    ['whole.ensemble', 'out.csv'],
  ],
  ['log', ['log', of('backyard.csv'), '--write-map', 'map.yaml'], ['map.yaml']],
  ['new', ['new', 'power-cut', '--out', 'cut.yaml'], ['cut.yaml', 'glasshouse.yaml']],
  [
    'fit',
    ['fit', ...logged, '--starts', '1', '--free', 'start.nitrate', '--out', 'found.json'],
    ['found.json'],
  ],
];

/** What a command refuses to write over. */
const onlyNew = new Set(['new']);

/** A folder with two shards to merge. */
const shards = folderWith();
for (const [i, name] of ['a', 'b'].entries())
  await leat(
    [
      'ensemble',
      'small.yaml',
      '--days',
      '4',
      '--members',
      '4',
      '--shard',
      `${i + 1}/2`,
      '--out',
      `${name}.ensemble`,
    ],
    shards,
  );

function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'leat-killed-'));
  for (const name of readdirSync(shards)) writeFileSync(join(folder, name), readFileSync(join(shards, name)));
  return folder;
}

/** Runs the command and kills it after so many milliseconds, or when a file beside its place appears. */
function killedAfter(
  args: readonly string[],
  folder: string,
  after: number,
  atFile: boolean,
): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [leatPath, ...args], { cwd: folder, stdio: 'ignore' });
    const began = performance.now();
    const watch = setInterval(() => {
      const writing = atFile && readdirSync(folder).some((name) => name.endsWith('.part'));
      if (writing || performance.now() - began > after) child.kill('SIGKILL');
    }, 1);
    child.on('error', reject);
    child.on('exit', (_code, by) => {
      clearInterval(watch);
      resolve(by === 'SIGKILL');
    });
  });
}

describe.each(commands)('leat %s, killed at any moment', (name, args, files) => {
  it('leaves the old file or the new one, never half', { timeout: 60_000 + tries * 20_000 }, async () => {
    const random = createRandom(name.length * 101 + 7);
    const whole = freshFolder();
    const began = performance.now();
    expect(await leat(args, whole)).toMatchObject({ code: 0 });
    const takes = performance.now() - began;
    const made = new Map(files.map((file) => [file, readFileSync(join(whole, file))]));
    for (let n = 0; n < tries; n++) {
      const folder = freshFolder();
      const before = readdirSync(folder);
      if (!onlyNew.has(name)) for (const file of files) writeFileSync(join(folder, file), old);
      // Every other time in the last third, where files are written, or at the sight of one half written.
      const after = takes * (n % 2 === 0 ? 0.7 + 0.35 * random() : random());
      const killed = await killedAfter(args, folder, after, n % 2 === 0);
      for (const file of files) {
        if (onlyNew.has(name) && !existsSync(join(folder, file))) continue;
        const found = readFileSync(join(folder, file));
        const isNew = made.get(file)?.equals(found) === true;
        // An ensemble keeps what is done now and then: a part of it is a whole file too.
        const isPart =
          file === 'kept.ensemble' && (await leat(['merge', file, '--json'], folder)).out.startsWith('{');
        expect(isNew || isPart || found.toString() === old, `${file} is neither old nor new`).toBe(true);
      }
      const stray = readdirSync(folder).filter((left) => !before.includes(left) && !files.includes(left));
      // At most what was being written, under a name that says so and that no command reads.
      for (const left of stray) expect(left).toMatch(/^[a-z]+\.[a-z]+\.\d+\.part$/);
      expect(stray.length).toBeLessThanOrEqual(killed ? 1 : 0);
      // The next call is not confused by what is left, and writes over nothing that it must not write over.
      const taken = onlyNew.has(name) && existsSync(join(folder, files[0]));
      expect((await leat(args, folder)).code).toBe(taken ? 2 : 0);
    }
  });
});
