import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

interface SizeDocument {
  readonly kind: string;
  readonly value: number | null;
  readonly fails: number;
  readonly vary: { readonly path: string; readonly unit: string; readonly whole: boolean };
  readonly trials: readonly { readonly value: number; readonly holds: boolean; readonly broke?: string }[];
  readonly handbook: { readonly rule: string; readonly values: readonly { readonly value: number }[] } | null;
  readonly reasons?: { readonly went: readonly { readonly to: string; readonly share: number }[] };
  readonly drawn?: { readonly spread: { readonly members: number; readonly survive: number } };
}

const documentOf = (text: string): SizeDocument => JSON.parse(text) as SizeDocument;
const folder = folderWith();
const short = ['--days', '12'];
const media = ['--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'];
const tan = ['--keep', 'highest tan@tank averaged 1 d below 0.32 mg N/L'];
const size = (...args: string[]) => leat(['size', 'small.yaml', ...args, ...short], folder);
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

describe('leat size', () => {
  it('varies several values at once by one factor, and says what each becomes', async () => {
    const args = [
      'size',
      'small.yaml',
      '--days',
      '10',
      '--vary',
      'fish.*.ration',
      '--vary',
      'fish.tilapia.number',
    ];
    const range = ['--from', '0.5', '--to', '8', '--largest', '--keep', 'highest tan@tank below 1.5 mg N/L'];
    const { code, out } = await leat([...args, ...range], folder);
    expect(code).toBe(0);
    expect(out.replaceAll(/\n +/g, ' ')).toMatch(
      /^a factor on what the file says: fish\.tilapia\.ration [\d.]+ %\/d, fish\.tilapia\.number \d+$/m,
    );
    expect(out.replaceAll(/\n +/g, ' ')).toMatch(
      /^answer: [\d.]+ times what the file says: fish\.tilapia\.ration [\d.]+ %\/d/m,
    );
    const none = await leat([...args.slice(0, 4), '--vary', 'fish.*.rations', ...range], folder);
    expect([none.code, none.err.includes('nothing is written there')]).toEqual([2, true]);
    const unit = ['--from', '1 g/d', '--to', '2 g/d', '--keep', 'highest tan@tank below 1 mg N/L'];
    const bad = await leat([...args, ...unit], folder);
    expect([bad.code, bad.err.includes('bare factors')]).toEqual([2, true]);
  });

  it('is in the help, with its options', async () => {
    const { out } = await leat(['size', '--help'], folder);
    for (const option of ['vary', 'from', 'to', 'keep', 'largest', 'within', 'members', 'seed', 'chosen'])
      expect(out).toContain(`--${option}`);
  });

  it('gives the smallest surface, what fails, the handbook beside it and why they differ', async () => {
    const { code, out, err } = await size(...media, ...tan);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^answer: [\d.]+ m2$/m);
    expect(out).toMatch(/^ {2}[\d.]+ m2 fails: highest tan@tank averaged 1 d below 0\.32 mg N\/L$/m);
    expect(out).toMatch(/^by the handbook: TAN of the day of most feed over an areal rate; 26 degC here$/m);
    expect(out).toMatch(/^- where TAN went: .*oxidised in filter/m);
    expect(out).toContain('Fish welfare');
    expect(widest(out)).toBeLessThanOrEqual(100);
  });

  it('gives one document with every value tried, the same each time', async () => {
    const first = await size(...media, ...tan, '--json');
    const found = documentOf(first.out);
    expect(found).toMatchObject({
      kind: 'found',
      vary: { path: 'vessels.filter.surface', unit: 'm2', whole: false },
      handbook: { rule: 'surface' },
    });
    expect(found.trials.find(({ value }) => value === found.value)?.holds).toBe(true);
    expect(found.trials.find(({ value }) => value === found.fails)?.holds).toBe(false);
    const shares = found.reasons?.went.map(({ share }) => share) ?? [];
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect((await size(...media, ...tan, '--json')).out).toBe(first.out);
  });

  it('takes ends in two units, and finds the largest number of whole fish beside what the filter carries', async () => {
    const fish = ['--vary', 'fish.tilapia.number', '--from', '10', '--to', '300', '--largest'];
    const found = documentOf((await size(...fish, ...tan, '--json')).out);
    expect(found).toMatchObject({ kind: 'found', vary: { whole: true }, handbook: { rule: 'load' } });
    expect(found.fails - (found.value ?? 0)).toBe(1);
    const volume = ['--vary', 'vessels.tank.volume', '--from', '1500 L', '--to', '3 m3', '--json'];
    const mixed = documentOf((await size(...volume, '--keep', 'lowest oxygen@tank above 1')).out);
    expect([mixed.kind, mixed.vary.unit, mixed.value]).toEqual(['holds-everywhere', 'L', 1500]);
    expect(mixed.trials[mixed.trials.length - 1].value).toBe(3000);
    expect(mixed.handbook).toBeNull();
  });

  it('sizes a bed by feed per area in the handbook', async () => {
    const bed = ['--vary', 'plantings.lettuce.area', '--from', '1 m2', '--to', '4 m2', '--json'];
    const found = documentOf((await size(...bed, '--keep', 'highest nitrate@sump below 60 mg N/L')).out);
    // 60 fish of 120 g at 1.5 % are 108 g of feed at the start, and more as they grow.
    expect(found.handbook).toMatchObject({ rule: 'planted-area' });
    const [least, most] = found.handbook?.values.map(({ value }) => value) ?? [];
    expect(least).toBeGreaterThan(108 / 50);
    expect(most / least).toBeCloseTo(50 / 40, 9);
  });

  it('spreads the size over draws, the same with one and two workers', async () => {
    const draws = [...media, ...tan, '--members', '3', '--seed', '7', '--chosen', '120 m2', '--json'];
    const one = await size(...draws, '--workers', '1');
    expect(one.code).toBe(0);
    expect(documentOf(one.out).drawn?.spread.members).toBe(3);
    expect((await size(...draws, '--workers', '2')).out).toBe(one.out);
  });

  it('tells of draws in words', async () => {
    const { out } = await size(...media, ...tan, '--members', '2', '--workers', '2');
    expect(out).toMatch(/^over 2 draws of the uncertain numbers \(seed 1\)$/m);
    expect(out).toMatch(/^- median .* half of the draws from .* 90 % from/m);
    expect(out).toMatch(/keeps every condition in \d of 2 \([\d.]+ %\) of the draws/);
  });
});

describe('what leat size refuses', () => {
  const fish = (from: string, to: string) => ['--vary', 'fish.tilapia.number', '--from', from, '--to', to];
  const volume = (from: string, to: string) => [
    '--vary',
    'vessels.filter.volume',
    '--from',
    from,
    '--to',
    to,
  ];
  it.each([
    [['--vary', 'vessels.filtr.volume', '--from', '1 L', '--to', '2 L', ...tan], 'did you mean filter?'],
    [['--vary', 'vessels.filter.volum', '--from', '1 L', '--to', '2 L', ...tan], 'did you mean volume?'],
    [[...volume('-5 L', '20 L'), ...tan], '--from: vessels.filter.volume: negative'],
    [
      [...volume('500 L', '200 L'), ...tan],
      '--to: an empty range; got "200 L"; expected more than --from, 500 L',
    ],
    [[...volume('200 L', '200 L'), ...tan], '--to: an empty range'],
    [[...volume('100', '200'), ...tan], '--from: vessels.filter.volume: a number without a unit'],
    [
      [...volume('100 L', '200'), ...tan],
      '--to: a number without a unit; got "200"; expected a quantity in L',
    ],
    [[...volume('100', '200 L'), ...tan], '--from: a number without a unit'],
    [[...volume('100 L', '2 kg'), ...tan], '--to: not the same kind of quantity as one in L'],
    [[...volume('much', '2 L'), ...tan], '--from: not a quantity; got "much"'],
    [[...volume('1 kg', '2 kg'), ...tan], '--from: vessels.filter.volume: wrong dimension'],
    [[...fish('1.5', '9'), ...tan], 'expected a whole number'],
    [[...media, '--keep', 'highest tam@tank below 1'], 'did you mean tan@tank?'],
    [[...media, '--keep', 'highest tam@tank below 1', '--keep', 'keeps nothing-there'], 'no such limit'],
    [[...media, ...tan, '--members', '2', '--chosen', '3 kg'], '--chosen: not the same kind of quantity'],
  ])('exit 2 for %j', async (args, message) => {
    const { code, out, err } = await size(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('says with exit 2 that no value keeps the conditions, and still tells what was tried', async () => {
    const { code, out, err } = await size(...media, '--keep', 'highest tan@tank below 0.01');
    expect(code).toBe(2);
    expect(out).toContain(
      'no value tried keeps every condition; what fails where it comes nearest: highest tan@tank',
    );
    expect(err).toContain('--vary: vessels.filter.surface: no value from 5 m2 to 200 m2 of those tried');
  });

  it('says with exit 2 that conditions hold, fail and hold again, and where', async () => {
    // Two batches are cut in turn: what stands at the end goes up and down with the age at the start.
    const age = ['--vary', 'plantings.lettuce.age', '--from', '3 d', '--to', '27 d'];
    const { code, out, err } = await size(...age, '--keep', 'last crop-mass@lettuce above 360 g dry');
    expect(code).toBe(2);
    expect(out).toMatch(
      /^no one size: the conditions hold, fail and hold again; they hold from .* d to .* d, from/m,
    );
    expect(out).toMatch(/^ {2}the first of them begins at [\d.]+ d; [\d.]+ d fails: last crop-mass@lettuce/m);
    expect(err).toContain('hold, fail and hold again from 3 d to 27 d: there is no one size');
  });

  it('names runs that broke off and leaves with 3 when all did', async () => {
    const { code, out, err } = await size(...media, ...tan, '--set', 'parameters.oxygen.saturation.a=1000');
    expect(code).toBe(3);
    expect(out).toContain('the run broke off on day 0');
    expect(err).toContain('not finished: the run broke off on day 0: not-finite');
  });

  it.each([
    [[...media, ...tan, '--members', '0'], 'Give a whole number from 1.'],
    [[...media, ...tan, '--chosen', '50 m2'], '--chosen is asked of draws: --members'],
    [[...media], "required option '--keep <condition>' not specified"],
    [[...media, ...tan, '--within', '0%'], 'Write it as a percentage'],
  ])('exit 5 for %j', async (args, message) => {
    const { code, out, err } = await size(...args);
    expect([code, out]).toEqual([5, '']);
    expect(err).toContain(message);
  });
});
