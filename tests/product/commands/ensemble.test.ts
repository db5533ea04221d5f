import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, type Call } from '../../support/leat.js';

interface EnsembleJson {
  readonly title: string;
  readonly members: number;
  readonly ran: number;
  readonly failed: readonly { readonly member: number; readonly reason: string }[];
  readonly drawn: readonly { readonly id: string }[];
  readonly time: readonly number[];
  readonly series: Readonly<
    Record<string, { readonly median: readonly number[]; readonly resolution: number }>
  >;
  readonly measures: readonly { readonly text: string; readonly answered: number; readonly median: number }[];
  readonly conditions: readonly { readonly holds: number; readonly share: number }[];
}

const documentOf = (text: string): EnsembleJson => JSON.parse(text) as EnsembleJson;
const folder = folderWith({
  'short.yaml': 'include: small.yaml\ndays: 4\n',
  'broken.yaml': 'include: short.yaml\nparameters: { oxygen.saturation.a: 1000 }\n',
});
const short = ['ensemble', 'short.yaml', '--members', '24', '--seed', '7', '--workers', '1'];
const asked = [...short, '--of', 'highest tan@tank', '--keep', 'highest tan@tank below 5'];
const whole = await leat([...asked, '--json', '--csv', 'whole.csv', '--out', 'whole.ensemble'], folder);
const bytes = (file: string): Buffer => readFileSync(join(folder, file));

describe('leat ensemble', () => {
  it('is in the help, with its options', async () => {
    expect((await leat(['--help'], folder)).out).toContain('ensemble [options] <file>');
    const { out } = await leat(['ensemble', '--help'], folder);
    for (const option of 'members seed sampling correlate of keep days every set workers out resume shard json csv'.split(
      ' ',
    ))
      expect(out).toContain(`--${option}`);
  });

  it('tells bands, odds and what was asked, on one screen', async () => {
    const { code, out, err } = await leat([...asked, '--resume', 'whole.ensemble'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^24 of 24 members \(latin-hypercube, seed 7\), \d+ numbers drawn from their ranges$/m,
    );
    expect(out).toMatch(/^nitrate@tank +mg N\/L +[\d.]+ +[\d.]+ \.\. [\d.]+ +[\d.]+ \.\. [\d.]+$/m);
    expect(out).toMatch(/^highest tan@tank: [\d.]+ mg N\/L \(50 %: /m);
    expect(out).toMatch(/^keeps in \d+ of 24 \(\d+\.\d %\): highest tan@tank below 5$/m);
    expect(out).toContain('measure your own water');
    expect(out.split('\n').length).toBeLessThan(200);
  });

  it('writes one JSON document, and a CSV table of median and bands', () => {
    expect([whole.code, whole.err]).toEqual([0, '']);
    const document = documentOf(whole.out);
    expect([document.members, document.ran, document.failed]).toEqual([24, 24, []]);
    expect(document.time).toEqual([0, 1, 2, 3, 4]);
    expect(document.measures[0]).toMatchObject({ text: 'highest tan@tank', answered: 24 });
    expect(document.series['nitrate@tank'].median).toHaveLength(5);
    expect(document.drawn.map(({ id }) => id)).toContain('feed.grower-32.protein');
    const [head, ...rows] = bytes('whole.csv').toString().trimEnd().split('\n');
    expect(head).toContain('nitrate_tank_median_mg_N_per_L,nitrate_tank_p25_mg_N_per_L');
    expect(rows).toHaveLength(5);
  });

  it('gives the same bytes with one worker and with two', async () => {
    const two = await leat([...asked, '--json', '--workers', '2', '--out', 'two.ensemble'], folder);
    expect(two.out).toBe(whole.out);
    expect(bytes('whole.ensemble').equals(bytes('two.ensemble'))).toBe(true);
  });

  it('gives other members for another seed and for Sobol points', async () => {
    const other = documentOf(
      (
        await leat(
          ['ensemble', 'short.yaml', '--members', '3', '--seed', '8', '--workers', '1', '--json'],
          folder,
        )
      ).out,
    );
    const sobol = documentOf(
      (await leat([...short, '--members', '4', '--sampling', 'sobol', '--json'], folder)).out,
    );
    const ends = [documentOf(whole.out), other, sobol].map(({ series }) => series['tan@tank'].median[4]);
    expect(new Set(ends).size).toBe(3);
  });

  it('takes a rank correlation', async () => {
    const pair = 'biofilm.cycled-aob biofilm.cycled-nob';
    const { code, out } = await leat([...short, '--correlate', `${pair} 0.7`, '--json'], folder);
    expect(code).toBe(0);
    expect(out).not.toBe(whole.out);
    expect((await leat([...short, '--correlate', `${pair} strong`], folder)).err).toMatch(
      /^--correlate: not a rank correlation; got "biofilm.cycled-aob biofilm.cycled-nob strong"/,
    );
    expect(
      (await leat([...short, '--correlate', 'biofilm.cycled-aob biofilm.cycled-nbo 0.2'], folder)).err,
    ).toMatch(/did you mean biofilm.cycled-nob\?/);
  });

  it('counts and names members that break off, and leaves with 3 when all do', async () => {
    const { code, out, err } = await leat(
      ['ensemble', 'broken.yaml', '--members', '3', '--workers', '1', '--json'],
      folder,
    );
    expect(code).toBe(3);
    expect(err).toMatch(/the run with the numbers as they stand breaks off on day/);
    expect(err).toMatch(/every member failed/);
    const { failed } = documentOf(out);
    expect(failed.map(({ member }) => member)).toEqual([0, 1, 2]);
    expect(failed[0].reason).toMatch(/on day [\d.]+/);
  });
});

describe('shards', async () => {
  const parts = ['1/3', '2/3', '3/3'];
  const files = parts.map((part) => `part-${part[0]}.ensemble`);
  const calls: Call[] = [];
  for (const [i, part] of parts.entries())
    calls.push(await leat([...asked, '--shard', part, '--out', files[i]], folder));

  it('each hold their members', () => {
    expect(calls.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(calls[1].err).toBe(
      'shard 2/3: 8 of 24 members are in part-2.ensemble; leat merge joins the shards\n',
    );
  });

  it('joined are the whole run, byte for byte, in any order', async () => {
    const merged = await leat(
      ['merge', ...[...files].reverse(), '--json', '--out', 'merged.ensemble'],
      folder,
    );
    expect([merged.code, merged.err, merged.out]).toEqual([0, '', whole.out]);
    expect(bytes('merged.ensemble').equals(bytes('whole.ensemble'))).toBe(true);
  });

  it('are told as not finished while one is missing', async () => {
    const { code, out, err } = await leat(['merge', files[0], files[2], '--json'], folder);
    expect([code, documentOf(out).ran]).toEqual([3, 16]);
    expect(err).toBe('not finished: 8 of 24 members are in none of the files\n');
  });

  it('are refused twice, and of different runs', async () => {
    const twice = await leat(['merge', files[0], files[0]], folder);
    expect([twice.code, twice.err]).toEqual([
      2,
      'part-1.ensemble: member 0 is in another of the files too\n',
    ]);
    await leat(
      [
        'ensemble',
        'short.yaml',
        '--members',
        '24',
        '--workers',
        '1',
        '--shard',
        '2/3',
        '--out',
        'other.ensemble',
      ],
      folder,
    );
    const { code, err } = await leat(['merge', files[0], 'other.ensemble'], folder);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^other.ensemble: of another ensemble than part-1.ensemble:\n {2}--seed: 7 \/ 1\n {2}--of: highest tan@tank \/ \n/,
    );
  });
});

describe('what cannot be', () => {
  it.each([
    [['--members', '0'], 5, /Give a whole number from 1/],
    [['--members', '-3'], 5, /Give a whole number from 1/],
    [['--members', '2.5'], 5, /Give a whole number from 1/],
    [['--seed', '-1'], 5, /Give a whole number from 0/],
    [['--sampling', 'grid'], 5, /latin-hypercube, sobol/],
    [['--shard', '3/2', '--out', 'x'], 5, /Give it as i\/n, i from 1 to n/],
    [['--shard', '0/2', '--out', 'x'], 5, /Give it as i\/n/],
    [['--shard', '1/2'], 5, /a shard is kept in a file: --out/],
    [['--workers', '0'], 5, /Give a whole number from 1/],
    [['--of', 'tallest tan@tank'], 2, /^--of: tallest tan@tank: no such statistic; got tallest/],
    [
      ['--of', 'highest tan@tnak'],
      2,
      /^--of: highest tan@tnak: no such series; .* did you mean tan@tank\?$/m,
    ],
    [['--keep', 'highest tan@tank below 1 m3'], 2, /^--keep: .*wrong dimension: this is a volume/],
    [['--resume', 'none.ensemble'], 2, /^none.ensemble: cannot be read: no such file/],
    [['--resume', 'short.yaml'], 2, /^short.yaml: not a file of leat ensemble --out/],
    [
      ['--resume', 'whole.ensemble'],
      2,
      /^whole.ensemble: of another ensemble \(kept \/ asked\):\n {2}--members: 24 \/ 5/,
    ],
  ] as const)('%s', async (args, code, message) => {
    const call = await leat(['ensemble', 'short.yaml', '--members', '5', '--workers', '1', ...args], folder);
    expect([call.code, call.out]).toEqual([code, '']);
    expect(call.err).toMatch(message);
  });

  it('a file cut short', async () => {
    const cut = folderWith({ 'short.yaml': 'include: small.yaml\ndays: 4\n' });
    await leat(['ensemble', 'short.yaml', '--members', '2', '--workers', '1', '--out', 'two.ensemble'], cut);
    const path = join(cut, 'two.ensemble');
    const { length } = readFileSync(path);
    expect((await leat(['merge', 'two.ensemble'], cut)).code).toBe(0);
    writeFileSync(path, readFileSync(path).subarray(0, length - 20));
    const { code, err } = await leat(['merge', 'two.ensemble'], cut);
    expect(code).toBe(2);
    expect(err).toMatch(/^two.ensemble: damaged, cut short or changed after it was written/);
  });
});
