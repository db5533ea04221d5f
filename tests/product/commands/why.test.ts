import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

interface WhyDocument {
  readonly quantity: string;
  readonly unit: string;
  readonly difference: number;
  readonly parts: readonly { readonly name: string; readonly value: number; readonly did?: string }[];
  readonly from: { readonly file: string; readonly day: number; readonly value: number };
  readonly to: { readonly file: string; readonly day: number; readonly value: number };
  readonly around: string;
}

const documentOf = (text: string): WhyDocument => JSON.parse(text) as WhyDocument;
const folder = folderWith({
  'two.yaml':
    'include: small.yaml\nplantings: { lettuce: { area: 1 m2 } }\nfish: { tilapia: { number: 25 } }\n',
  'fewer.yaml': 'include: small.yaml\ntitle: Fewer crops\nplantings: { lettuce: { area: 1 m2 } }\n',
  'broken.yaml': 'include: small.yaml\nparameters: { oxygen.saturation.a: 1000 }\n',
});
const nitrate = ['--of', 'nitrate@sump'];
const two = ['why', 'small.yaml', 'fewer.yaml'];
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

/** How far the plain sum of the parts is from the difference. */
function gap({ difference, parts }: WhyDocument): number {
  return Math.abs(parts.reduce((sum, { value }) => sum + value, 0) - difference);
}

describe('leat why', () => {
  it('is in the help, with its options', async () => {
    expect((await leat(['--help'], folder)).out).toContain('why [options] <file> [other]');
    const { out } = await leat(['why', '--help'], folder);
    for (const option of ['of', 'at', 'from', 'to', 'around', 'days', 'every', 'set', 'json'])
      expect(out).toContain(`--${option}`);
  });

  it('says in a sentence and a table that less uptake raised nitrate, with cautions', async () => {
    const { code, out, err } = await leat([...two, ...nitrate, '--at', '30d'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^nitrate in sump on day 30 \(31 Mar\) is [\d.]+ mg N\/L higher in B \([\d.]+\) than in A \([\d.]+ mg N\/L\): /,
    );
    expect(out.replaceAll('\n', ' ')).toMatch(/: \+[\d.]+ +by +less +nitrate uptake by crops/);
    expect(out).toMatch(/^less nitrate uptake by crops +\+[\d.]+ +[\d.]+ %$/m);
    expect(out).toMatch(/^difference +\+[\d.]+$/m);
    for (const [, share] of out.matchAll(/([\d.]+) %$/gm)) expect(Number(share)).toBeLessThanOrEqual(100);
    expect(out).toContain('Fish welfare');
    expect(widest(out)).toBeLessThanOrEqual(100);
    expect(out).not.toContain('\u001b');
  });

  it.each([
    ['nitrate@sump', 'system'],
    ['nitrate@sump', 'place'],
    ['alkalinity@tank', 'system'],
    ['volume@sump', 'system'],
    ['fish-mean-mass@tilapia', 'place'],
    ['crop-nitrogen@lettuce', 'system'],
  ])('gives parts of %s around the %s that sum to the difference within 1e-9', async (quantity, around) => {
    const args = ['--of', quantity, '--at', '25 d', '--around', around, '--json'];
    const { code, out } = await leat(['why', 'small.yaml', 'fewer.yaml', ...args], folder);
    const found = documentOf(out);
    expect(code).toBe(0);
    expect(found).toMatchObject({ quantity, around, from: { day: 25 }, to: { day: 25 } });
    expect(found.difference).toBe(found.to.value - found.from.value);
    expect(found.parts.length).toBeGreaterThan(0);
    expect(gap(found)).toBeLessThan(1e-9);
  });

  it('gives the values of the runs, at the last day that both have where none is asked for', async () => {
    const found = documentOf(
      (await leat([...two, ...nitrate, '--json', '--days', '12', '--every', '6h'], folder)).out,
    );
    const run = JSON.parse(
      (await leat(['run', 'fewer.yaml', '--json', '--days', '12', '--every', '6h'], folder)).out,
    ) as {
      series: Record<string, { values: number[] }>;
    };
    expect(found.to).toEqual({
      file: 'fewer.yaml',
      title: 'Fewer crops',
      day: 12,
      // Series in a document have the digits that mean something.
      value: expect.closeTo(run.series['nitrate@sump'].values[48], 4) as number,
    });
    expect(found.parts.find(({ name }) => name === 'nitrate uptake by crops')?.did).toBe('less');
  });

  it('compares two days of one run, and says neither more nor less', async () => {
    const args = ['why', 'small.yaml', '--of', 'nitrate@system', '--from', '10d', '--to', '30d'];
    const { code, out } = await leat(args, folder);
    expect(code).toBe(0);
    expect(out.replaceAll(/\n */g, ' ')).toMatch(
      /^nitrate in the whole system is [\d.]+ mg N\/L (lower|higher) on day 30 \(31 Mar\), at [\d.]+, than on day 10 \(11 Mar\), at [\d.]+ mg N\/L: /,
    );
    expect(out).not.toMatch(/\b(less|more) nitr/);
    const found = documentOf((await leat([...args, '--json'], folder)).out);
    expect([found.from.day, found.to.day]).toEqual([10, 30]);
    expect(gap(found)).toBeLessThan(1e-9);
    const end = documentOf((await leat([...args.slice(0, 6), '--json'], folder)).out);
    expect(end.to.day).toBe(40);
  });

  it('says so when nothing differs', async () => {
    const { code, out } = await leat(['why', 'small.yaml', 'small.yaml', ...nitrate, '--at', '5d'], folder);
    expect(code).toBe(0);
    expect(out.replaceAll(/\n */g, ' ')).toMatch(
      /^nitrate in sump on day 5 \(6 Mar\) is the same .*: nothing made a difference /,
    );
  });

  it('writes a table whose rounded parts sum to the rounded difference, netted and in detail', async () => {
    for (const detail of [[], ['--detail']]) {
      const { out } = await leat([...two, ...nitrate, '--at', '30d', ...detail], folder);
      const [, , ...lines] = out.slice(out.indexOf('of all that moved it')).split('\n\n')[0].split('\n');
      const values = out
        .split('\n')
        .flatMap((line) => /^(?!difference)\S.* {2,}([-+]?[\d.]+) +[\d.]+ %$/.exec(line)?.[1] ?? [])
        .map(Number);
      const difference = Number(/^difference +(\S+)/m.exec(out)?.[1]);
      expect(lines.length).toBeGreaterThan(2);
      expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(difference, 9);
      expect(out.includes('--detail shows all')).toBe(detail.length === 0);
    }
  });

  it('splits by what was changed, each alone and together, and sums', async () => {
    const args = ['why', 'small.yaml', 'two.yaml', ...nitrate, '--at', '30d', '--by', 'change'];
    const { code, out } = await leat(args, folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^nitrate in sump on day 30 \(31 Mar\) is [\d.]+ mg N\/L higher/);
    expect(out).toMatch(/: area of lettuce cut to a quarter \(1 m2, was 4 m2\)/);
    expect(out).toContain('4 runs, one for each set of 2 changes');
    expect(out).toContain('through what: nitrate in sump');
    expect(widest(out)).toBeLessThanOrEqual(100);
    const document = JSON.parse((await leat([...args, '--json'], folder)).out) as {
      difference: number;
      changes: { name: string; value: number; alone: number }[];
    };
    expect(document.changes.map(({ name }) => name).sort()).toEqual(['fish.tilapia', 'plantings.lettuce']);
    const total = document.changes.reduce((sum, { value }) => sum + value, 0);
    expect(Math.abs(total - document.difference)).toBeLessThan(1e-9);
  });

  it('splits pH too, which no process sums to', async () => {
    const args = ['why', 'small.yaml', 'fewer.yaml', '--of', 'pH@sump', '--at', '30d', '--by', 'change'];
    const { code, out } = await leat(args, folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^pH in sump on day 30 \(31 Mar\) is /);
    expect(out).not.toContain('through what');
  });

  it('puts --set over both', async () => {
    const args = [
      ...two,
      '--of',
      'fish-number@tilapia',
      '--at',
      '0d',
      '--json',
      '--set',
      'fish.tilapia.number=7',
    ];
    const found = documentOf((await leat(args, folder)).out);
    expect([found.from.value, found.to.value]).toEqual([7, 7]);
  });
});

describe('exit codes of leat why', () => {
  it.each([
    [['--of', 'nitrat@sump'], 'did you mean nitrate@sump?'],
    [['--of', 'pH@sump'], 'not a sum of what processes and flows did'],
    [[...nitrate, '--at', '60d'], 'not an output time'],
    [[...nitrate, '--at', '3'], '--at: a number without a unit'],
  ])('2 for %j', async (args, message) => {
    const { code, out, err } = await leat([...two, ...args], folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('3 and no answer when a run broke off before that day', async () => {
    const { code, out, err } = await leat(
      ['why', 'small.yaml', 'broken.yaml', ...nitrate, '--at', '9d'],
      folder,
    );
    expect([code, out]).toEqual([3, '']);
    expect(err).toContain('broken.yaml: not finished: not-finite on day 0');
  });

  it.each([
    [['why', 'small.yaml', 'fewer.yaml']],
    [['why', 'small.yaml', ...nitrate]],
    [['why', 'small.yaml', ...nitrate, '--at', '3d']],
    [['why', 'small.yaml', ...nitrate, '--to', '3d']],
    [['why', 'small.yaml', 'fewer.yaml', ...nitrate, '--from', '3d', '--to', '5d']],
    [['why', 'small.yaml', 'fewer.yaml', ...nitrate, '--around', 'tank']],
    [['why', 'small.yaml', ...nitrate, '--from', '3d', '--by', 'change']],
    [['why', 'small.yaml', 'fewer.yaml', ...nitrate, '--by', 'change', '--most', '9']],
  ])('5 for %j', async (args) => {
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([5, '']);
    expect(err).not.toBe('');
  });
});
