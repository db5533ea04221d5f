import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

interface SweepDocument {
  readonly vary: readonly {
    readonly path: string;
    readonly unit: string;
    readonly values: readonly number[];
  }[];
  readonly of: readonly { readonly text: string; readonly unit: string }[];
  readonly points: readonly {
    readonly values: readonly number[];
    readonly measures: readonly (number | null)[];
    readonly margins: readonly (number | null)[];
    readonly holds?: boolean;
    readonly broke?: string;
  }[];
}

const folder = folderWith();
const sweep = (...args: string[]) => leat(['sweep', 'small.yaml', '--days', '8', ...args], folder);
const documentOf = (text: string): SweepDocument => JSON.parse(text) as SweepDocument;
const tan = ['--of', 'highest tan@tank averaged 1 d'];
const surface = ['--vary', 'vessels.filter.surface=5 m2:50 m2:3'];
const fish = ['--vary', 'fish.tilapia.number=20:80:3'];

describe('leat sweep', () => {
  it('is in the help, with its options', async () => {
    const { out } = await leat(['sweep', '--help'], folder);
    for (const option of ['vary', 'of', 'keep', 'csv', 'json', 'workers', 'set', 'days', 'every'])
      expect(out).toContain(`--${option}`);
  });

  it('gives a table over one quantity, marking what fails a condition', async () => {
    const { code, out, err } = await sweep(
      ...surface,
      ...tan,
      '--keep',
      'highest tan@tank averaged 1 d below 0.31',
    );
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^surface +\[1\] +\[2\]$/m);
    expect(out).toMatch(/^ +5 m2 +[\d.]+ +-[\d.]+ +!$/m);
    expect(out).toMatch(/^ +50 m2 +[\d.]+ +[\d.]+$/m);
    expect(out).toContain('! fails a condition');
  });

  it('gives a map over two, and the same numbers as one run', async () => {
    const { out } = await sweep(...surface, ...fish, ...tan, '--json');
    const { vary, points, of } = documentOf(out);
    expect(vary.map(({ values }) => values)).toEqual([
      [5, 27.5, 50],
      [20, 50, 80],
    ]);
    expect(points.map(({ values }) => values)[1]).toEqual([5, 50]);
    expect(of).toEqual([{ text: 'highest tan@tank averaged 1 d', unit: 'mg N/L' }]);
    const at = ['--set', 'vessels.filter.surface=27.5 m2', '--set', 'fish.tilapia.number=80'];
    const run = JSON.parse(
      (await leat(['run', 'small.yaml', '--days', '8', '--json', ...at], folder)).out,
    ) as {
      series: Record<string, { values: number[] }>;
    };
    const { values } = run.series['tan@tank'];
    const means = values.slice(1).map((value, i) => (value + values[i]) / 2);
    // Series in a document have the digits that mean something.
    expect(points[5].measures[0]).toBeCloseTo(Math.max(...means), 6);
    const words = (await sweep(...surface, ...fish, ...tan)).out;
    expect(words).toMatch(/^down: vessels\.filter\.surface: 3 values from 5 m2 to 50 m2$/m);
    expect(words).toMatch(/^ +20 +50 +80$/m);
    expect(words).toMatch(/^27\.5 m2 +[\d.]+ +[\d.]+ +[\d.]+$/m);
  });

  it('writes CSV with a row a point, the same bytes with one and two workers', async () => {
    const asked = [...surface, ...fish, ...tan, '--keep', 'keeps limits', '--csv'];
    expect((await sweep(...asked, 'one.csv', '--workers', '1')).code).toBe(0);
    expect((await sweep(...asked, 'two.csv', '--workers', '2')).code).toBe(0);
    const text = readFileSync(join(folder, 'one.csv'), 'utf8');
    const [head, first, ...rest] = text.trimEnd().split('\n');
    expect(head).toBe(
      'vessels.filter.surface [m2],fish.tilapia.number,highest tan@tank averaged 1 d [mg N/L],' +
        'margin of keeps limits [1],all hold,broke off',
    );
    expect(first).toMatch(/^5,20,[\d.]+,-?[\d.]+,(yes|no),$/);
    expect(rest.length).toBe(8);
    expect(readFileSync(join(folder, 'two.csv'), 'utf8')).toBe(text);
  });

  it('draws a line or a map that says what it shows, the same bytes each time', async () => {
    const keep = ['--keep', 'highest tan@tank averaged 1 d below 0.315'];
    const drawn = async (name: string, ...args: string[]): Promise<string> => {
      expect((await sweep(...args, ...tan, ...keep, '--svg', name)).code).toBe(0);
      return readFileSync(join(folder, name), 'utf8');
    };
    const line = await drawn('line.svg', ...surface);
    expect(line).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(line).toContain('highest tan@tank averaged 1 d, mg N/L over 3 values of vessels.filter.surface');
    expect(line.match(/<circle/g)).toHaveLength(3);
    const map = await drawn('map.svg', ...surface, ...fish);
    expect(map).toContain('edge of: highest tan@tank averaged 1 d below 0.315');
    expect(map.match(/<text[^>]*>[\d.]+ !</g)?.length).toBeGreaterThan(0);
    expect(map).not.toContain('NaN');
    expect(await drawn('again.svg', ...surface, ...fish)).toBe(map);
  });

  it('names points that broke off or make no system, and gives no number for them', async () => {
    // Each end alone makes a system; a float at 500 L in a sump of 450 L does not.
    const levels = ['--vary', 'top-up.level=400 L:500 L:2', '--vary', 'vessels.sump.volume=450 L:600 L:2'];
    const { points } = documentOf(
      (await sweep(...levels, ...tan, '--json', '--set', 'top-up.level=400 L')).out,
    );
    expect(points.map(({ broke }) => broke === undefined)).toEqual([true, true, false, true]);
    expect(points[2].broke).toContain('top-up.level');
    const wet = ['--vary', 'parameters.oxygen.saturation.a=-139.34411:1000:2', ...tan];
    const { code, out } = await sweep(...wet);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +1000 +- +\?$/m);
    expect(out).toMatch(/^\? at 1000: the run broke off on day 0: not-finite$/m);
    expect(documentOf((await sweep(...wet, '--json')).out).points[1]).toMatchObject({ measures: [null] });
    const all = await sweep(...surface, ...tan, '--set', 'parameters.oxygen.saturation.a=1000');
    expect(all.code).toBe(3);
    expect(all.err).toContain('no point has an answer: the run broke off on day 0');
  });

  it.each([
    [['--vary', 'vessels.filtr.volume=1 L:2 L:3', ...tan], 'did you mean filter?'],
    [['--vary', 'vessels.filter.volume=-5 L:2 L:3', ...tan], '--vary: vessels.filter.volume: negative'],
    [['--vary', 'vessels.filter.volume=500 L:200 L:3', ...tan], '--vary: an empty range'],
    [['--vary', 'vessels.filter.volume=200:500:3', ...tan], 'a number without a unit'],
    [['--vary', 'vessels.filter.volume=200 L:500 L:1', ...tan], 'not a number of values; got "1"'],
    [['--vary', 'vessels.filter.volume=200 L:500 L', ...tan], '--vary: not a range of values'],
    [
      [...surface, '--vary', 'vessels.filter.surface=1 m2:2 m2:2', ...tan],
      'vessels.filter.surface: varied twice',
    ],
    [[...surface, '--of', 'highest tam@tank', '--of', 'hihgest tan@tank'], 'did you mean highest?'],
  ])('exit 2 for %j', async (args, message) => {
    const { code, out, err } = await sweep(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it.each([
    [[...surface], 'nothing is asked of the runs: --of or --keep'],
    [[...surface, ...fish, '--vary', 'seed=1:2:2', ...tan], 'at most two quantities'],
    [[...tan], "required option '--vary <path=A:B:n>' not specified"],
  ])('exit 5 for %j', async (args, message) => {
    const { code, err } = await sweep(...args);
    expect(code).toBe(5);
    expect(err).toContain(message);
  });
});
