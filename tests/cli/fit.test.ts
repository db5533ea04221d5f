import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { leat } from './leat.js';

interface Told {
  readonly from: string;
  readonly courses: readonly { readonly reads: string; readonly truth: readonly (readonly number[])[] }[];
}

interface Scored {
  readonly origins: readonly string[];
  readonly scores: readonly { readonly model: number; readonly in50: number; readonly in90: number }[];
}

const folder = mkdtempSync(join(tmpdir(), 'leat-fit-'));
const logged = ['backyard.yaml', '--log', 'backyard.csv', '--map', 'backyard.map'];
const free = ['--free', 'biofilm.capacity', '--free', 'start.nitrate'];

describe('leat fit, forecast and backtest on the invented backyard', () => {
  const copied = leat(['new', 'backyard'], folder);
  const fitted = leat(['fit', ...logged, ...free, '--starts', '1', '--out', 'fit.json'], folder);

  it('the log and its map come with the system', () => {
    expect(copied.err).toContain('backyard.csv');
    expect(copied.err).toContain('backyard.map');
  });

  it('says what was found, what readings say of it, and what to test next', () => {
    expect(fitted.code).toBe(0);
    expect(fitted.out).toContain('162 readings from 2026-03-01 to 2026-06-03');
    expect(fitted.out).toMatch(/biofilm\.capacity +0\.\d+ +0\.\d+ to 0\.\d+/);
    expect(fitted.out).toContain('tests that would tell most');
  });

  it('the file is what other commands take, and the same each time', () => {
    const again = leat(['fit', ...logged, ...free, '--starts', '1', '--json'], folder);
    expect(again.out).toBe(readFileSync(join(folder, 'fit.json'), 'utf8'));
    const run = leat(['run', 'backyard.yaml', '--fit', 'fit.json', '--days', '5'], folder);
    expect(run.code).toBe(0);
    expect(run.err).toContain('fit.json: 2 numbers as fitted to the log of 2026-03-01 to 2026-06-03');
  });

  it('a file that is no fit is refused by name', () => {
    writeFileSync(join(folder, 'no-fit.json'), '{"schema":"leat-state"}');
    const run = leat(['run', 'backyard.yaml', '--fit', 'no-fit.json'], folder);
    expect(run.code).toBe(2);
    expect(run.err).toContain(
      'no-fit.json: schema "leat-state" is another kind of file; expected schema leat-fit, version 1',
    );
    writeFileSync(join(folder, 'cut.json'), '{');
    const cut = leat(['run', 'backyard.yaml', '--fit', 'cut.json'], folder);
    expect([cut.code, cut.err]).toEqual([
      2,
      'cut.json: not JSON; expected a fit written with `leat fit --out`\n',
    ]);
    const text = readFileSync(join(folder, 'fit.json'), 'utf8');
    writeFileSync(join(folder, 'later.json'), text.replace('"version": 1', '"version": 2'));
    const later = leat(['run', 'backyard.yaml', '--fit', 'later.json'], folder);
    expect(later.code).toBe(2);
    expect(later.err).toContain('later.json: ');
    expect(later.err).toContain('version 1');
  });

  it('forecasts from the day after the log, and a what-if changes what lies ahead', () => {
    const asked = ['forecast', ...logged, '--fit', 'fit.json', '--members', '8', '--days', '14', '--json'];
    const plain = JSON.parse(leat(asked, folder).out) as Told;
    const fed = JSON.parse(leat([...asked, '--set', 'fish.tilapia.ration=160 g/d'], folder).out) as Told;
    const ammonia = (told: Told): readonly (readonly number[])[] =>
      told.courses.find(({ reads }) => reads === 'ammonia')?.truth ?? [];
    expect(plain.from).toBe('2026-06-04');
    expect(ammonia(plain)).toHaveLength(15);
    expect(ammonia(fed)[0]).toEqual(ammonia(plain)[0]);
    expect(ammonia(fed)[14][2]).toBeGreaterThan(1.5 * ammonia(plain)[14][2]);
  });

  it('a backtest tells errors beside two forecasts that need no model', () => {
    const told = JSON.parse(
      leat(['backtest', ...logged, ...free, '--members', '6', '--step', '28', '--json'], folder).out,
    ) as Scored;
    expect(told.origins).toEqual(['2026-04-12', '2026-05-10']);
    expect(told.scores.length).toBeGreaterThan(8);
    for (const score of told.scores) {
      expect(score.model).toBeGreaterThanOrEqual(0);
      expect(score.in90).toBeGreaterThanOrEqual(score.in50);
    }
  });
});
