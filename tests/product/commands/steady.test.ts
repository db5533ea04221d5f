import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({
  'fed.yaml': 'include: small.yaml\nfish: { tilapia: { hours: 08:00-18:00 } }\n',
  'thirsty.yaml':
    'include: small.yaml\ntop-up: { from: [{ water: mains, cap: 1 L/d }] }\npumps: { main: { inlet: 1 L, restart: 200 L } }\n',
});
const glasshouse = fileURLToPath(new URL('../../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));
const steady = (...args: string[]) => leat(['steady', ...args], folder);
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

interface SteadyDocument {
  readonly kind: string;
  readonly period: number;
  readonly day: number;
  readonly held: readonly { readonly component: string; readonly drift?: number }[];
  readonly modes: readonly { readonly time: number; readonly recovery: number }[];
  readonly series: Record<string, { readonly values: readonly number[] }>;
}

describe('leat steady', () => {
  it('is in the help, with its options', async () => {
    const { out } = await leat(['steady', '--help'], folder);
    for (const option of ['on', 'crops', 'hold', 'set', 'days', 'json']) expect(out).toContain(`--${option}`);
  });

  it('tells the water, time constants, what is held and the limits passed', async () => {
    const { code, out, err } = await steady('small.yaml', '--hold', 'nitrate');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^a state that stays as it is, under the weather of day 0 \(1 Mar\); small changes die away/m,
    );
    expect(out).toMatch(/^tank +[\d.]+ +[\d.]+ +[\d.]+/m);
    expect(out).toMatch(
      /^after a disturbance 95 % back in: settled solids that hardly break down \d+ months; /m,
    );
    expect(out).not.toMatch(/time constant|Newton/);
    expect(out).toMatch(/^held: fish: fish grow and die until they are taken out$/m);
    expect(out).toMatch(/^held: nitrate in sump: held as asked; the system would lose [\d.]+ g N\/d of it$/m);
    expect(out).toContain('limits passed');
    expect(widest(out)).toBeLessThanOrEqual(100);
  });

  it('holds what would take decades to settle, and says so; a longer patience lets it settle', async () => {
    const slow = ['small.yaml', '--set', 'vessels.sump.exchange=0.2 L/d'];
    const { out } = await steady(...slow, '--patience', '400 d', '--detail');
    expect(out).toMatch(
      /^held: chloride in sump: too slow to settle, so it stands as it does\s+at the start \(it would take \d+\s+years\)/m,
    );
    expect(out).toMatch(/^time constant +95 % back in +made by$/m);
    expect(out).toMatch(/^found by \d+ d of simulation and \d+ Newton steps/m);
    const long = await steady(...slow, '--patience', '400000 d');
    expect(long.out).not.toContain('too slow to settle');
    const bad = await steady('small.yaml', '--patience', '3');
    expect([bad.code, bad.err.includes('--patience: a number without a unit')]).toEqual([2, true]);
  });

  it('says so when the state repeats each day, and shows from where to where it goes', async () => {
    const { out } = await steady('fed.yaml');
    expect(out).toMatch(/^a state that repeats each day, under the weather of day 0/m);
    expect(out).toMatch(/^tank +[\d.]+-[\d.]+/m);
  });

  it('is found where ions and the state that they make lead to and fro, in the shipped glasshouse; else says what may be held', async () => {
    const found = await steady(glasshouse, '--json');
    expect([found.code, found.err]).toEqual([0, '']);
    const { held, series } = JSON.parse(found.out) as SteadyDocument;
    expect(held.map(({ component }) => component)).toContain('chloride');
    expect(series['chloride@sump'].values[0]).toBeCloseTo(60, 6);
    const endless = await steady(glasshouse, '--days', '40');
    expect([endless.code, endless.out]).toEqual([3, '']);
    expect(endless.err).toMatch(/^not finished: no state that lasts was found .*\n\(--hold keeps /);
    expect((await steady(glasshouse, '--days', '40', '--hold', 'calcium')).code).toBe(0);
  });

  it('gives one document, the same each time, whose slowest time constant is the longest', async () => {
    const { out } = await steady('small.yaml', '--json', '--on', '2025-03-11');
    const found = JSON.parse(out) as SteadyDocument;
    expect(found).toMatchObject({ kind: 'constant', period: 1, day: 10 });
    const times = found.modes.map(({ time }) => time);
    expect(times).toEqual([...times].sort((a, b) => b - a));
    expect(found.modes[0].recovery).toBeCloseTo(times[0] * Math.log(20), 6);
    const { values } = found.series['tan@tank'];
    expect(Math.abs(values[values.length - 1] / values[0] - 1)).toBeLessThan(1e-9);
    expect((await steady('small.yaml', '--json', '--on', '10 d')).out).toBe(out);
  });

  it.each([
    [['small.yaml', '--on', '2024-03-01'], '--on: before the start, 2025-03-01; got "2024-03-01"'],
    [['small.yaml', '--on', '2025-02-30'], '--on: no such date'],
    [['small.yaml', '--on', '10'], '--on: a number without a unit'],
    [['small.yaml', '--hold', 'nitrat'], 'no such component of the water; got nitrat'],
    [['thirsty.yaml', '--set', 'climate.et0=0.2 mm/d'], 'the water never settles'],
  ])('exit 2 for %j', async (args, message) => {
    const { code, out, err } = await steady(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('exit 5 for crops held in another way', async () => {
    const { code, err } = await steady('small.yaml', '--crops', 'ripe');
    expect([code, err.includes('Allowed choices are mean, as-at-start')]).toEqual([5, true]);
  });
});
