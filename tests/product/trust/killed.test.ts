import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatSignalled } from '../../support/leat.js';
import { full } from '../../support/length.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const of = (name: string): string => join(scenarios, name);
const logged = [of('backyard.yaml'), '--log', of('backyard.csv'), '--map', of('backyard.map')];
const highest = 'highest tan@tank averaged 1 d';
const old = 'what stood here before\n';

/** Every command that writes, with the files that it writes. */
const commands: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  [
    'run',
    ['run', 'small.yaml', '--days', '4', '--csv', 'out.csv', '--save', 'end.json'],
    ['out.csv', 'end.json'],
  ],
  ['report', ['report', 'small.yaml', '--days', '4', '--out', 'page.html'], ['page.html']],
  [
    'plot',
    ['plot', 'small.yaml', '--days', '4', '--of', 'nitrate@sump', '--out', 'course.png'],
    ['course.png'],
  ],
  [
    'sweep',
    [
      ...[
        'sweep',
        'small.yaml',
        '--days',
        '4',
        '--vary',
        'vessels.filter.surface=5 m2:50 m2:2',
        '--workers',
        '1',
      ],
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
        '3',
        '--workers',
        '1',
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
    [
      'fit',
      ...logged,
      '--until',
      '2026-03-20',
      '--starts',
      '1',
      '--free',
      'start.nitrate',
      '--out',
      'found.json',
    ],
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
      '2',
      '--workers',
      '1',
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

/**
 * When a command that writes so many files is killed: with each of them half written, and with each whole and not yet under its
 * name. The short form kills at the last file only, once, half written or whole in turns.
 */
function moments(files: number, turn: number): readonly string[] {
  const all = Array.from({ length: files }, (_, i) => [`half ${i + 1}`, `whole ${i + 1}`]).flat();
  return full ? all : [all[all.length - 1 - (turn % 2)]];
}

const cases = commands.flatMap(([name, args, files], turn) =>
  moments(files.length, turn).map((moment) => [name, moment, args, files] as const),
);

describe.each(cases)('leat %s, killed with file %s written', (name, moment, args, files) => {
  it('leaves the old file or the new one, never half', async () => {
    const over = onlyNew.has(name) ? args : [...args, '--force'];
    const whole = freshFolder();
    expect(await leat(args, whole)).toMatchObject({ code: 0 });
    const made = new Map(files.map((file) => [file, readFileSync(join(whole, file))]));
    const folder = freshFolder();
    const before = readdirSync(folder);
    if (!onlyNew.has(name)) for (const file of files) writeFileSync(join(folder, file), old);
    expect(leatSignalled(over, folder, 'SIGKILL', moment).code).toBe(137);
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
    // What was being written, under a name that says so and that no command reads.
    expect(stray).toEqual([expect.stringMatching(/^[a-z]+\.[a-z]+\.\d+\.part$/)]);
    // The next call is not confused by what is left, and writes over nothing that it must not write over.
    const taken = onlyNew.has(name) && existsSync(join(folder, files[0]));
    expect((await leat(over, folder)).code).toBe(taken ? 2 : 0);
  });
});
