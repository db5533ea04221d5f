import {
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatSignalled, shell } from '../../support/leat.js';
import { smallSystem } from '../../support/small-text.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const shipped = (name: string): string => readFileSync(join(scenarios, name), 'utf8');
const highest = 'highest tan@tank averaged 1 d';
const days = `day,et0\n${Array.from({ length: 40 }, (_, i) => `${i},4`).join('\n')}\n`;
const table = 'id\tvalue\tunit\tlow\thigh\tdistribution\tconditions\tsource\tpage\tmark\n';

/** Files of every kind that a call reads. */
const files = {
  'b.yaml': smallSystem,
  'over.yaml': 'include: small.yaml\ntitle: Laid over\n',
  'et0.csv': days,
  'dry.yaml': smallSystem.replace('et0: 4 mm/d', 'et0: { csv: et0.csv, column: et0, unit: mm/d }'),
  'own.tsv': table,
  'saved.yaml': smallSystem.replace('biofilm: cycled', 'biofilm: cycled\n  saved: end.json'),
  'log.csv': shipped('backyard.csv'),
  'log.map': shipped('backyard.map'),
  'backyard.yaml': shipped('backyard.yaml'),
};

const logged = ['backyard.yaml', '--log', 'log.csv', '--map', 'log.map'];
const fitted = ['fit', ...logged, '--until', '2026-03-20', '--starts', '1', '--free', 'start.nitrate'];
const few = ['--days', '2', '--members', '2', '--workers', '1'];
const sized = ['size', 'small.yaml', '--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'];
const size = [...sized, '--keep', `${highest} below 0.35 mg N/L`, ...few];
const swept = ['sweep', 'small.yaml', '--days', '2', '--vary', 'vessels.filter.surface=5 m2:50 m2:2'];
const sweep = [...swept, '--of', highest, '--workers', '1'];
const local = ['sensitivity', 'small.yaml', '--of', highest, '--method', 'local', '--only', 'aob.*'];

/** A folder with everything, a kept state and two shards, made once and copied. */
const made = folderWith(files);
await leat(['run', 'small.yaml', '--days', '2', '--save', 'end.json', '--quiet'], made);
for (const i of [1, 2])
  await leat(['ensemble', 'small.yaml', ...few, '--shard', `${i}/2`, '--out', `${i}.ensemble`], made);
const held = Object.fromEntries(readdirSync(made).map((name) => [name, readFileSync(join(made, name))]));
const fresh = (): string => folderWith(held);

/** What a folder holds, each file as it stands. */
const contents = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder)
      .sort()
      .map((name) => [name, readFileSync(join(folder, name)).toString('latin1')]),
  );

/** Calls of which an output is an input: with the file that would be lost. */
const destroying: readonly (readonly [string, readonly string[]])[] = [
  ['b.yaml', ['run', 'b.yaml', '--csv', 'b.yaml']],
  ['b.yaml', ['run', 'b.yaml', '--save', './b.yaml', '--force']],
  ['small.yaml', ['run', 'over.yaml', '--csv', 'small.yaml', '--force']],
  ['et0.csv', ['run', 'dry.yaml', '--csv', 'et0.csv', '--force']],
  ['own.tsv', ['run', 'small.yaml', '--tables', 'own.tsv', '--csv', 'own.tsv', '--force']],
  ['end.json', ['run', 'saved.yaml', '--save', 'end.json']],
  ['small.yaml', ['report', 'b.yaml', 'small.yaml', '--out', 'small.yaml', '--force']],
  ['small.yaml', [...sweep, '--csv', 'small.yaml', '--force']],
  ['small.yaml', [...sweep, '--svg', 'small.yaml', '--force']],
  ['small.yaml', [...size, '--out', 'small.yaml', '--force']],
  ['small.yaml', ['ensemble', 'small.yaml', ...few, '--out', 'small.yaml', '--force']],
  ['small.yaml', ['ensemble', 'small.yaml', ...few, '--csv', 'small.yaml', '--force']],
  [
    '1.ensemble',
    ['ensemble', 'small.yaml', ...few, '--resume', '1.ensemble', '--out', 'n.ens', '--csv', '1.ensemble'],
  ],
  ['1.ensemble', ['merge', '1.ensemble', '2.ensemble', '--out', '1.ensemble']],
  ['2.ensemble', ['merge', '1.ensemble', '2.ensemble', '--csv', '2.ensemble', '--force']],
  ['small.yaml', [...local, '--days', '2', '--out', 'small.yaml', '--force']],
  ['log.csv', ['log', 'log.csv', '--write-map', 'log.csv', '--force']],
  ['b.yaml', ['log', 'log.csv', '--system', 'b.yaml', '--write-map', 'b.yaml', '--force']],
  ['log.csv', [...fitted, '--out', 'log.csv', '--force']],
  ['log.map', [...fitted, '--out', 'log.map', '--force']],
  ['backyard.yaml', [...fitted, '--out', 'backyard.yaml', '--force']],
];

describe('an output that is an input', () => {
  it.each(destroying)('is refused before anything runs: %s by %j', async (file, args) => {
    const folder = fresh();
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(file);
    expect(err).toMatch(/is read( as \S+)? and would be replaced; expected another name\n$/);
    expect(contents(folder)).toEqual(contents(made));
  });

  it('is known by whatever name: a link, a hard link, a way round', async () => {
    for (const name of ['soft.csv', 'hard.csv', 'below/../b.yaml', 'round/b.yaml']) {
      const folder = fresh();
      mkdirSync(join(folder, 'below'));
      symlinkSync('b.yaml', join(folder, 'soft.csv'));
      symlinkSync('.', join(folder, 'round'));
      linkSync(join(folder, 'b.yaml'), join(folder, 'hard.csv'));
      const { code, err } = await leat(['run', 'b.yaml', '--csv', name, '--force'], folder);
      expect([code, err]).toEqual([
        2,
        `${name}: --csv: is read as b.yaml and would be replaced; expected another name\n`,
      ]);
      expect(readFileSync(join(folder, 'b.yaml'), 'utf8')).toBe(smallSystem);
    }
  });

  it('may be what the result is sent to', () => {
    const folder = fresh();
    const { code, err } = shell('$LEAT run b.yaml >> b.yaml', folder);
    expect([code, err]).toEqual([2, 'b.yaml: cannot be read: it is where the result goes\n']);
    expect(readFileSync(join(folder, 'b.yaml'), 'utf8')).toBe(smallSystem);
  });
});

describe('an output that is another', () => {
  it.each([
    ['the same name', ['run', 'small.yaml', '--csv', 'x', '--save', 'x'], '--save'],
    ['a way round', ['run', 'small.yaml', '--csv', 'x', '--save', './x'], '--save'],
    ['two options of a sweep', [...sweep, '--csv', 'x.svg', '--svg', 'x.svg'], '--svg'],
    ['two of an ensemble', ['ensemble', 'small.yaml', ...few, '--out', 'x', '--csv', 'x'], '--csv'],
    ['two of a merge', ['merge', '1.ensemble', '2.ensemble', '--out', 'x', '--csv', 'x'], '--csv'],
    ['what is gone on from', ['ensemble', 'small.yaml', '--resume', 'x', '--csv', 'x'], '--csv'],
    ['one stream', ['run', 'small.yaml', '--csv', '-', '--save', '/dev/stdout'], '--save'],
  ])('is refused: %s', async (_, args, option) => {
    const folder = fresh();
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(new RegExp(`: is what --\\w+ writes; expected another name for ${option}\n$`));
    expect(contents(folder)).toEqual(contents(made));
  });

  it('is known by a link to where nothing is yet', async () => {
    const folder = fresh();
    symlinkSync('later.csv', join(folder, 'link.json'));
    const { code } = await leat(['run', 'small.yaml', '--csv', 'later.csv', '--save', 'link.json'], folder);
    expect(code).toBe(2);
  });

  it('is known where the result itself goes to a file', () => {
    const folder = fresh();
    const { code, err } = shell('$LEAT run small.yaml --csv all.txt > all.txt', folder);
    expect([code, err]).toEqual([
      2,
      'all.txt: --csv: is where the result goes already; expected another name\n',
    ]);
  });
});

/** Every way to write a file, with a name that a person may have taken. */
const writing: readonly (readonly [string, readonly string[]])[] = [
  ['taken.csv', ['run', 'small.yaml', '--days', '2', '--csv', 'taken.csv']],
  ['taken.json', ['run', 'small.yaml', '--days', '2', '--save', 'taken.json']],
  ['taken.html', ['report', 'small.yaml', '--days', '2', '--out', 'taken.html']],
  ['taken.svg', ['plot', 'small.yaml', '--days', '2', '--of', 'nitrate@sump', '--out', 'taken.svg']],
  ['taken.png', ['plot', 'small.yaml', '--days', '2', '--of', 'nitrate@sump', '--out', 'taken.png']],
  ['taken.csv', [...sweep, '--csv', 'taken.csv']],
  ['taken.svg', [...sweep, '--svg', 'taken.svg']],
  ['taken.size', [...size, '--out', 'taken.size']],
  ['taken.ens', ['ensemble', 'small.yaml', ...few, '--out', 'taken.ens']],
  ['taken.csv', ['ensemble', 'small.yaml', ...few, '--csv', 'taken.csv']],
  ['taken.ens', ['merge', '1.ensemble', '2.ensemble', '--out', 'taken.ens']],
  ['taken.sens', [...local, '--days', '2', '--out', 'taken.sens']],
  ['taken.json', [...fitted, '--out', 'taken.json']],
];

describe('a file that is there already', () => {
  it.each(writing)(
    '%s of a person is not written over without --force; of Leat it is: %j',
    async (name, args) => {
      const folder = fresh();
      writeFileSync(join(folder, name), 'date,ammonia\n2026-03-01,0.5\n');
      const refused = await leat(args, folder);
      expect([refused.code, refused.out]).toEqual([2, '']);
      expect(refused.err).toMatch(
        /is there already and is not overwritten; expected another name, or --force\n$/,
      );
      expect(readFileSync(join(folder, name), 'utf8')).toBe('date,ammonia\n2026-03-01,0.5\n');
      expect((await leat([...args, '--force'], folder)).code).toBe(0);
      const first = readFileSync(join(folder, name));
      expect(first.toString('latin1')).not.toContain('2026-03-01,0.5');
      expect((await leat(args, folder)).code).toBe(0);
      expect(readFileSync(join(folder, name)).equals(first)).toBe(true);
    },
  );

  it('of one kind is not taken for another', async () => {
    const folder = fresh();
    await leat(['run', 'small.yaml', '--days', '2', '--csv', 'x', '--quiet'], folder);
    expect((await leat(['run', 'small.yaml', '--days', '2', '--save', 'x'], folder)).code).toBe(2);
    expect((await leat([...sweep, '--csv', 'x'], folder)).code).toBe(2);
  });

  it('is written over where it is empty, and a map or a scenario never without --force', async () => {
    const folder = fresh();
    writeFileSync(join(folder, 'empty.csv'), '');
    expect((await leat(['run', 'small.yaml', '--days', '2', '--csv', 'empty.csv'], folder)).code).toBe(0);
    const map = ['log', 'log.csv', '--write-map', 'mine.map'];
    expect((await leat(map, folder)).code).toBe(0);
    expect((await leat(map, folder)).code).toBe(2);
    expect((await leat([...map, '--force'], folder)).code).toBe(0);
    expect((await leat(['new', 'backyard'], folder)).code).toBe(2);
    expect((await leat(['new', 'backyard', '--force'], folder)).code).toBe(0);
  });

  it('keeps who may read it', async () => {
    const folder = fresh();
    writeFileSync(join(folder, 'x.csv'), '', { mode: 0o600 });
    await leat(['run', 'small.yaml', '--days', '2', '--csv', 'x.csv', '--quiet'], folder);
    expect(statSync(join(folder, 'x.csv')).mode & 0o777).toBe(0o600);
  });

  it('is not taken for what nobody named: work that ends early is kept under a free name', () => {
    const folder = fresh();
    const many = ['ensemble', 'small.yaml', '--days', '2', '--members', '9', '--workers', '1'];
    const kept = [1, 2].map(() => {
      const { code, err } = leatSignalled(many, folder, 'SIGINT', 'tasks 4');
      expect(code).toBe(130);
      return /kept in (\S+):/.exec(err)?.[1] ?? '';
    });
    expect(kept[1]).toBe(kept[0].replace('.ensemble', '-2.ensemble'));
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(kept));
  });
});

describe('a link', () => {
  it('is followed also where it leads to nothing yet', async () => {
    const folder = fresh();
    symlinkSync('real.csv', join(folder, 'link.csv'));
    expect((await leat(['run', 'small.yaml', '--days', '2', '--csv', 'link.csv'], folder)).code).toBe(0);
    expect(lstatSync(join(folder, 'link.csv')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'real.csv'), 'utf8')).toMatch(/^time/);
  });
});

describe('standard output as a file', () => {
  it.each(['-', '/dev/stdout', '/dev/fd/1'])('%s is written at its place, in a file as in a pipe', (name) => {
    const folder = fresh();
    const run = `$LEAT run small.yaml --days 2 --csv ${name}`;
    const piped = shell(`${run} --quiet | cat`, folder);
    expect([piped.code, piped.out.startsWith('time_d,date,')]).toEqual([0, true]);
    shell(`${run} > all.txt`, folder);
    const all = readFileSync(join(folder, 'all.txt'), 'utf8');
    expect(all.startsWith(piped.out)).toBe(true);
    expect(all.slice(piped.out.length)).toContain('Small');
    expect(readdirSync(folder)).not.toContain('-');
  });

  it('and a device may be named twice', async () => {
    const folder = fresh();
    const twice = ['run', 'small.yaml', '--days', '2', '--csv', '/dev/null', '--save', '/dev/null'];
    expect((await leat(twice, folder)).code).toBe(0);
  });
});
