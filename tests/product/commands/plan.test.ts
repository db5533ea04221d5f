import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith();
const short = ['--days', '8', '--members', '2'];
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

interface PlanDocument {
  readonly holds: boolean;
  readonly quantities: readonly { readonly name: string; readonly value: number }[];
  readonly weeks: readonly { readonly feed: readonly { readonly perDay: number }[] }[];
  readonly drawn: readonly unknown[];
  readonly outcome: { readonly fish: number };
}

describe('leat plan', () => {
  it('gives how many fish, a calendar, bands, and a scenario that runs to them', async () => {
    const { code, out, err } = await leat(
      [
        'plan',
        'small.yaml',
        ...short,
        '--aim',
        'most fish',
        '--vary',
        'fish=20:26',
        '--save',
        'planned.yaml',
      ],
      folder,
    );
    expect([code, err]).toEqual([0, 'planned.yaml: to be run by leat run planned.yaml\n']);
    expect(out).toMatch(/^Plan for most fish: [\d.]+ kg$/m);
    const [, fish] =
      /^ {2}fish at the start +(\d+) +looked at from 20 to 26: the end of it, more may do$/m.exec(out) ?? [];
    expect(out).toMatch(/^crops, fresh +kg .* to /m);
    expect(out).toMatch(/^week 1 +1 Mar +tilapia [\d.]+$/m);
    expect(out).toContain('is not proven');
    expect(widest(out)).toBeLessThanOrEqual(80);
    const kept = readFileSync(join(folder, 'planned.yaml'), 'utf8');
    expect(kept).toContain('include: "small.yaml"');
    expect(kept).toMatch(new RegExp(`number: ${fish}$`, 'm'));
    expect((await leat(['run', 'planned.yaml'], folder)).code).toBe(0);
  });

  it('gives one document, the same each time', async () => {
    const args = ['plan', 'small.yaml', ...short, '--vary', 'fish=20:26', '--json'];
    const { out } = await leat(args, folder);
    const found = JSON.parse(out) as PlanDocument;
    expect(found).toMatchObject({ schema: 'leat-plan', holds: true, quantities: [{ name: 'fish' }] });
    expect(found.drawn).toHaveLength(2);
    expect(found.weeks).toHaveLength(2);
    expect((await leat(args, folder)).out).toBe(out);
  });

  it('finds the least doses that hold alkalinity, and says them in grams by week', async () => {
    const there = folderWith({
      'dosed.yaml':
        'include: small.yaml\ndays: 9\nactions:\n' +
        '  - { at: 1 d, every: 7 d, dose: { into: sump, product: potassium-bicarbonate, mass: 40 g } }\n',
    });
    const level = 'last alkalinity@tank above 2.15 meq/L';
    const asked = ['--vary', 'doses=0.2:3', '--aim', 'least last alkalinity@tank', '--keep', level];
    const args = ['plan', 'dosed.yaml', '--members', '2', ...asked, '--save', 'held.yaml'];
    const { code, out, err } = await leat(args, there);
    expect(code, err).toBe(0);
    const [, told] = /^ {2}doses +([\d.]+) +looked at from 0.2 to 3$/m.exec(out) ?? [];
    const [, grams] = /^weeks 1 to 2 +1 Mar +([\d.]+) g potassium bicarbonate into sump$/m.exec(out) ?? [];
    expect(Number(grams)).toBeCloseTo(40 * Number(told), 0);
    expect(out).toMatch(/^in \d of 2 draws/m);
    // The plan holds, and a 32nd of the range less does not: by runs of the file, not by the search.
    const lastOf = async (file: string, ...more: string[]): Promise<number> => {
      const { series } = JSON.parse((await leat(['run', file, '--json', ...more], there)).out) as {
        series: Record<string, { values: number[] }>;
      };
      return series['alkalinity@tank'].values.at(-1) ?? Number.NaN;
    };
    expect(await lastOf('held.yaml')).toBeGreaterThan(2.15);
    const less = 40 * (Number(told) - 2.8 / 32);
    expect(await lastOf('dosed.yaml', '--set', `actions.0.dose.mass=${less} g`)).toBeLessThan(2.15);
  });

  it('says where nothing keeps the conditions, and writes no scenario', async () => {
    const { code, out, err } = await leat(
      ['plan', 'small.yaml', ...short, '--vary', 'fish=20:26', '--ration', '1 L/d'],
      folder,
    );
    expect([code, err]).toEqual([2, expect.stringContaining('no choice between the ends')]);
    expect(out).toMatch(/^No choice keeps every condition\. The one that comes nearest:$/m);
  });

  it.each([
    [['--vary', 'fish=20'], 'not a quantity with two ends'],
    [['--aim', 'best'], 'not an aim'],
    [['--aim', 'most income'], 'no prices in this file'],
    [['--ration', '10 L'], 'cap'],
    [['--keep', 'nitrate low'], '--keep'],
  ])('refuses %s', async (args, problem) => {
    const { code, err } = await leat(['plan', 'small.yaml', ...short, ...args], folder);
    expect([code, err]).toEqual([2, expect.stringContaining(problem)]);
  });
});
