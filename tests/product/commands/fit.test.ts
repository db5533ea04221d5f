import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { leat } from '../../support/leat.js';

interface Told {
  readonly from: string;
  readonly courses: readonly { readonly reads: string; readonly truth: readonly (readonly number[])[] }[];
}

interface Scored {
  readonly origins: readonly string[];
  readonly scores: readonly { readonly model: number; readonly in50: number; readonly in90: number }[];
}

interface Document {
  readonly whatIf: unknown;
  readonly courses: readonly { readonly reads: string; readonly unit: string }[];
}

const folder = mkdtempSync(join(tmpdir(), 'leat-fit-'));
const logged = ['backyard.yaml', '--log', 'backyard.csv', '--map', 'backyard.map'];
const free = ['--free', 'biofilm.capacity', '--free', 'start.nitrate'];

describe('leat fit, forecast and backtest on the invented backyard', async () => {
  const copied = await leat(['new', 'backyard'], folder);
  const fitted = await leat(['fit', ...logged, ...free, '--starts', '1', '--out', 'fit.json'], folder);

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

  it('the file is what other commands take, and the same each time', async () => {
    const again = await leat(['fit', ...logged, ...free, '--starts', '1', '--json'], folder);
    expect(again.out).toBe(readFileSync(join(folder, 'fit.json'), 'utf8'));
    const run = await leat(['run', 'backyard.yaml', '--fit', 'fit.json', '--days', '5'], folder);
    expect(run.code).toBe(0);
    expect(run.err).toContain('fit.json: 2 numbers as fitted to the log of 2026-03-01 to 2026-06-03');
  });

  it('a file that is no fit is refused by name', async () => {
    writeFileSync(join(folder, 'no-fit.json'), '{"schema":"leat-state"}');
    const run = await leat(['run', 'backyard.yaml', '--fit', 'no-fit.json'], folder);
    expect(run.code).toBe(2);
    expect(run.err).toContain(
      'no-fit.json: schema "leat-state" is another kind of file; expected schema leat-fit, version 1',
    );
    writeFileSync(join(folder, 'cut.json'), '{');
    const cut = await leat(['run', 'backyard.yaml', '--fit', 'cut.json'], folder);
    expect([cut.code, cut.err]).toEqual([
      2,
      'cut.json: not JSON; expected a fit written with `leat fit --out`\n',
    ]);
    const text = readFileSync(join(folder, 'fit.json'), 'utf8');
    writeFileSync(join(folder, 'later.json'), text.replace('"version": 1', '"version": 2'));
    const later = await leat(['run', 'backyard.yaml', '--fit', 'later.json'], folder);
    expect(later.code).toBe(2);
    expect(later.err).toContain('later.json: ');
    expect(later.err).toContain('version 1');
  });

  it('forecasts from the day after the log, and a what-if changes what lies ahead', async () => {
    const asked = ['forecast', ...logged, '--fit', 'fit.json', '--members', '8', '--days', '14', '--json'];
    const plain = JSON.parse((await leat(asked, folder)).out) as Told;
    const fed = JSON.parse(
      (await leat([...asked, '--set', 'fish.tilapia.ration=160 g/d'], folder)).out,
    ) as Told;
    const ammonia = (told: Told): readonly (readonly number[])[] =>
      told.courses.find(({ reads }) => reads === 'ammonia')?.truth ?? [];
    expect(plain.from).toBe('2026-06-04');
    expect(ammonia(plain)).toHaveLength(15);
    expect(ammonia(fed)[0]).toEqual(ammonia(plain)[0]);
    expect(ammonia(fed)[14][2]).toBeGreaterThan(1.5 * ammonia(plain)[14][2]);
  });

  it('a backtest tells errors beside two forecasts that need no model', async () => {
    const told = JSON.parse(
      (await leat(['backtest', ...logged, ...free, '--fits', '2', '--step', '28', '--json'], folder)).out,
    ) as Scored;
    expect(told.origins).toEqual(['2026-04-12', '2026-05-10']);
    expect(told.scores.length).toBeGreaterThan(8);
    for (const score of told.scores) {
      expect(score.model).toBeGreaterThanOrEqual(0);
      expect(score.in90).toBeGreaterThanOrEqual(score.in50);
    }
  });
});

describe('what a forecast says of itself', async () => {
  const home = mkdtempSync(join(tmpdir(), 'leat-age-'));
  const made = await leat(['new', 'backyard'], home);
  await leat(['fit', ...logged, ...free, '--starts', '1', '--out', 'fit.json'], home);
  const early = ['--until', '2026-05-20'];
  await leat(['fit', ...logged, ...free, '--starts', '1', ...early, '--out', 'early.json'], home);
  const asked = (log: string, fit: string, ...more: readonly string[]): readonly string[] => [
    ...['forecast', 'backyard.yaml', '--log', log, '--map', 'backyard.map', '--fit', fit],
    ...['--members', '3', '--days', '7', ...more],
  ];
  const text = readFileSync(join(home, 'backyard.csv'), 'utf8');
  const warnings = (out: string): readonly string[] =>
    out.match(/warning: .*the fit .*|warning: .*when the fit.*/g) ?? [];

  it('units stand beside every quantity, in the table and in the document', async () => {
    expect(made.code).toBe(0);
    const { code, out } = await leat(asked('backyard.csv', 'fit.json'), home);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +where +unit +morning of +middle/m);
    expect(out).toMatch(/^ammonia +\S+ +mg N\/L +2026-06-04/m);
    expect(out).toMatch(/^alkalinity +\S+ +meq\/L +2026-06-04/m);
    expect(out).toMatch(/^pH +\S+ +2026-06-04/m);
    const told = JSON.parse((await leat(asked('backyard.csv', 'fit.json', '--json'), home)).out) as Document;
    expect(told.whatIf).toBe(null);
    expect(told.courses.map(({ reads, unit }) => `${reads} ${unit}`)).toContain('oxygen mg/L');
  });

  it('has no doubt where all is as it was', async () => {
    expect(warnings((await leat(asked('backyard.csv', 'fit.json'), home)).out)).toEqual([]);
    expect(warnings((await leat(asked('backyard.csv', 'early.json', ...early), home)).out)).toEqual([]);
  });

  it('a what-if is named, and is no change of the system', async () => {
    writeFileSync(join(home, 'more.yaml'), 'fish:\n  tilapia:\n    ration: 150 g/d\n');
    const over = ['--set', 'fish.tilapia.ration=160 g/d', '--overlay', 'more.yaml'];
    const { out } = await leat(asked('backyard.csv', 'fit.json', ...over), home);
    expect(out).toContain('  what if, from 2026-06-04 on: more.yaml; fish.tilapia.ration=160 g/d\n');
    expect(warnings(out)).toEqual([]);
    const told = JSON.parse(
      (await leat(asked('backyard.csv', 'fit.json', ...over, '--json'), home)).out,
    ) as Document;
    expect(told.whatIf).toEqual({ set: ['fish.tilapia.ration=160 g/d'], overlay: 'more.yaml' });
  });

  it('says when the log has gone on since the fit, and when the fit knows more than the forecast', async () => {
    expect(warnings((await leat(asked('backyard.csv', 'early.json'), home)).out)).toEqual([
      expect.stringMatching(
        /^warning: the fit was made of the log up to 2026-05-20: it does not know the \d+ readings after that$/,
      ),
    ]);
    expect(warnings((await leat(asked('backyard.csv', 'fit.json', ...early), home)).out)).toEqual([
      expect.stringMatching(
        /^warning: the fit knows \d+ readings after 2026-05-20: this forecast is no test of it/,
      ),
    ]);
  });

  it('says when rows that the fit was made of have changed', async () => {
    const rows = text.split('\n');
    writeFileSync(join(home, 'shorter.csv'), [...rows.slice(0, 8), ...rows.slice(9)].join('\n'));
    expect(warnings((await leat(asked('shorter.csv', 'fit.json'), home)).out)).toEqual([
      'warning: the log up to 2026-06-03 is not as it was when the fit was made: fit again',
    ]);
  });

  it('says when the system file has changed', async () => {
    const system = readFileSync(join(home, 'backyard.yaml'), 'utf8');
    const changed = system.replace(/ration: (\d+) g\/d/, 'ration: 99 g/d');
    expect(changed).not.toBe(system);
    writeFileSync(join(home, 'changed.yaml'), changed);
    const { out } = await leat(
      asked('backyard.csv', 'fit.json').map((word) => (word === 'backyard.yaml' ? 'changed.yaml' : word)),
      home,
    );
    expect(warnings(out)).toEqual([
      'warning: the system file is not as it was when the fit was made (or the fit was made with --set or --tables): fit again',
    ]);
  });

  it('a fit says what to do with it, kept or not', async () => {
    const one = ['fit', ...logged, '--free', 'start.nitrate', '--starts', '1'];
    expect((await leat(one, home)).err).toMatch(
      /^this fit is not kept: with --out fit\.json .* take with --fit fit\.json\n$/,
    );
    expect((await leat([...one, '--out', 'one.json'], home)).err).toBe(
      'written to one.json: leat forecast, run, ensemble and others take it with --fit one.json\n',
    );
    expect((await leat([...one, '--json'], home)).err).toBe('');
  });

  it('errors of a backtest have their unit', async () => {
    const { out } = await leat(['backtest', ...logged, ...free, '--fits', '1', '--step', '40'], home);
    expect(out).toMatch(/^readings +where +days ahead +count +unit +forecast/m);
    expect(out).toMatch(/^ammonia +\S+ +1 to 7 +\d+ +mg N\/L +[\d.]+/m);
  });
});
