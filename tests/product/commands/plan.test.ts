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
