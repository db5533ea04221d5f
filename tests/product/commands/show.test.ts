import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { copiedRows, ownTable } from '../../support/own-table.js';
import { folderWith, leat } from '../../support/leat.js';

interface Row {
  readonly id: string;
  readonly value: number;
  readonly mark: string;
  readonly given?: string;
}

interface Shown {
  readonly row: Row;
  readonly source: { readonly key: string; readonly doi: string } | null;
  readonly uses: readonly { readonly kind: string; readonly name: string }[];
  readonly library?: Row;
}

const growth = 'aob.growth|0.5|1/d|0.4|0.6|triangular|measured|Own log book, 2025|-|U';
const folder = folderWith({
  'my.tsv': ownTable(growth, ...copiedRows('fish.murray-cod', 'fish.estuary-perch')),
  'own.yaml': 'include: small.yaml\ntables: my.tsv\nparameters: { nob.growth: 0.8 }\n',
  'bad.tsv': ownTable(growth.replace('triangular', 'triangel')),
});
const show = async (...args: string[]): Promise<string> => (await leat(['show', ...args], folder)).out;
const json = async (...args: string[]): Promise<unknown> => JSON.parse(await show(...args, '--json'));
const shownNumber = async (...args: string[]): Promise<Shown> => (await json(...args)) as Shown;
const shownRows = async (...args: string[]): Promise<{ kind: string; rows: readonly Shown[] }> =>
  (await json(...args)) as { kind: string; rows: readonly Shown[] };

describe('leat show', () => {
  it('prints a number with unit, range, distribution, conditions, source, page, mark and use', async () => {
    const { code, out, err } = await leat(['show', 'fish.nile-tilapia.limit-nitrite'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toBe(
      [
        'fish.nile-tilapia.limit-nitrite',
        '  value       1 g/m3',
        '  range       0.3 .. 3 g/m3 (fixed: never drawn)',
        '  conditions  nitrite-N, upper, long-term; deaths begin near 5',
        '  source      timmons-ebeling: Timmons & Ebeling, Recirculating Aquaculture (2007; no DOI',
        '              recorded). From memory, editions of 2007, 2010 and 2013',
        '  page        not recorded',
        '  mark        M: from memory of it',
        '  used by     limits for fish',
        '',
      ].join('\n'),
    );
  });

  it('names the processes that read a number, and says when none does', async () => {
    expect(await show('aob.growth')).toContain('process ammonia-oxidation: growth of ammonia oxidisers');
    expect(await show('crop.basil.nitrogen-uptake')).toContain(
      'used by     not used by the model; kept for reading',
    );
  });

  it.each([
    ['fish', 'nile-tilapia', 14],
    ['crops', 'lettuce-romaine', 24],
    ['media', 'pumice', 18],
    ['feeds', 'grower-32', 6],
    ['dosing', 'potassium-bicarbonate', 18],
    ['waters', 'hard-mains', 7],
    ['aerators', 'stone', 5],
    ['lime', 'shell', 4],
    ['limits', 'epa.acute.pivot', 83],
    ['constants', 'emerson.a', 77],
    ['parameters', 'biofilm.capacity', 163],
    ['weather', 'weather.albedo', 39],
    ['log', 'log.pH.lowest', 39],
  ])('lists %s', async (table, one, most) => {
    const lines = (await show(table)).trimEnd().split('\n');
    expect(lines.some((line) => line.startsWith(one))).toBe(true);
    expect(lines.length).toBeLessThanOrEqual(most);
    expect(lines.length).toBeGreaterThan(most - 4);
  });

  it('lists the tables and how to go on, without a word', async () => {
    expect(await show()).toContain('crops');
    expect(await show()).toContain('leat show nile-tilapia');
    expect(await json()).toMatchObject({ kind: 'tables' });
    expect(((await json()) as { tables: readonly unknown[] }).tables[0]).toEqual({
      table: 'fish',
      numbers: 338,
    });
  });

  it('lists all of a species by its id or its name alone, and all ids that begin alike', async () => {
    expect(await show('nile-tilapia')).toBe(await show('fish.nile-tilapia'));
    expect((await show('nile-tilapia')).split('\n')).toHaveLength(1 + 26 + 4);
    const acute = await shownRows('epa.acute');
    expect(acute.kind).toBe('part');
    expect(acute.rows.every(({ row }) => row.id.startsWith('epa.acute.'))).toBe(true);
  });

  it('lists the bibliography, and a source with its numbers', async () => {
    expect(await show('sources')).toContain('emerson-1975: Emerson, Russo, Lund & Thurston');
    const { rows } = await shownRows('emerson-1975');
    expect(rows.map(({ row }) => row.id)).toEqual(['emerson.a', 'emerson.b']);
  });

  it('gives one JSON document', async () => {
    const { row, source, uses } = await shownNumber('media.pumice.surface');
    expect(row).toMatchObject({ id: 'media.pumice.surface', value: 250 });
    expect(source).toMatchObject({ key: 'fao-589', doi: 'none' });
    expect(uses).toEqual([{ kind: 'part', name: 'vessels in a file' }]);
  });

  it.each([
    ['nile-talapia', 'nile-tilapia'],
    ['aob.growht', 'aob.growth'],
    ['fsh', 'fish'],
    ['fish.nile-tilapia.mortalty', 'fish.nile-tilapia.mortality'],
    ['timons-ebeling', 'timmons-ebeling'],
    ['epa.acut', 'epa.acute'],
  ])('suggests for %s what is near', async (word, near) => {
    const { code, out, err } = await leat(['show', word], folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(`nothing of this name in the library; got ${word}; did you mean ${near}?\n`);
  });

  it('says what there is where nothing is near', async () => {
    const { code, err } = await leat(['show', 'zzzzzzzzzz'], folder);
    expect(code).toBe(2);
    expect(err).toContain('expected an id, a source, or one of fish, crops');
  });
});

describe('leat show with numbers of the user', () => {
  it('shows what stands in a scenario, and in place of what', async () => {
    const { row, library } = await shownNumber('aob.growth', '--in', 'own.yaml');
    expect(row).toMatchObject({ value: 0.5, mark: 'U', given: 'my.tsv:2' });
    expect(library).toMatchObject({ value: 0.6 });
    expect((await shownNumber('nob.growth', '--in', 'own.yaml')).row).toMatchObject({
      value: 0.8,
      given: 'own.yaml:3',
    });
    const set = ['nob.growth', '--in', 'own.yaml', '--set', 'parameters.nob.growth=0.9'];
    expect((await shownNumber(...set)).row.value).toBe(0.9);
    expect(await show('aob.growth', '--in', 'own.yaml')).toContain(
      '  given in    my.tsv:2\n  in place of 0.6 1/d (0.3 .. 0.9)',
    );
  });

  it('shows a species that the user added, and what reads it', async () => {
    const { row, source, uses } = await shownNumber(
      'fish.estuary-perch.energy-retention',
      '--tables',
      'my.tsv',
    );
    expect(row.given).toMatch(/^my\.tsv:\d+$/);
    expect(source?.key).toBe('fish-upkeep');
    expect(uses.map(({ name }) => name)).toContain('feeding');
    expect(await show('fish', '--tables', 'my.tsv')).toContain('estuary-perch');
    expect((await leat(['show', 'estuary-perch'], folder)).code).toBe(2);
  });

  it('refuses --set without a scenario, and a faulty table', async () => {
    expect(await leat(['show', 'fish', '--set', 'days=3'], folder)).toEqual({
      code: 2,
      out: '',
      err: '--set: needs a scenario: --in names it\n',
    });
    const { code, err } = await leat(['show', 'fish', '--tables', 'bad.tsv'], folder);
    expect(code).toBe(2);
    expect(err).toContain('bad.tsv:2:28: distribution of aob.growth: unknown distribution');
  });
});

describe('--tables', () => {
  const short = ['--days', '2'];

  it('is said on the notes, in the manifest and among the sources of a run', async () => {
    const { code, out, err } = await leat(
      ['run', 'small.yaml', '--tables', 'my.tsv', ...short, '--json'],
      folder,
    );
    expect([code, err]).toEqual([0, 'my.tsv: 1 number in place of ours, 26 new (fish.estuary-perch)\n']);
    const document = JSON.parse(out) as {
      manifest: { given: string[]; scenario: string };
      sources: { key: string; given?: string; ids: string[] }[];
    };
    expect(document.manifest.given).toContain('aob.growth');
    expect(document.sources.find(({ ids }) => ids.includes('aob.growth'))).toMatchObject({
      key: 'Own log book, 2025',
      given: 'my.tsv',
    });
    const plain = JSON.parse(
      (await leat(['run', 'small.yaml', ...short, '--json'], folder)).out,
    ) as typeof document;
    expect(plain.manifest.scenario).not.toBe(document.manifest.scenario);
    expect(plain.manifest.given).toEqual([]);
    const words = (await leat(['run', 'small.yaml', '--tables', 'my.tsv', ...short, '--sources'], folder))
      .out;
    expect(words).toContain('[U: given by the user] Own log book, 2025 (given in my.tsv)\n  aob.growth');
  });

  it('gives the same as the key of the file', async () => {
    const run = async (...args: string[]): Promise<string> =>
      (await leat(['run', ...args, ...short, '--set', 'parameters.nob.growth=0.8', '--json'], folder)).out;
    expect(await run('own.yaml')).toBe(await run('small.yaml', '--tables', 'my.tsv'));
  });

  it('is taken by check, compare and why', async () => {
    const tables = ['--tables', 'my.tsv'];
    expect(await leat(['check', 'small.yaml', ...tables], folder)).toMatchObject({ code: 0 });
    const compared = await leat(['compare', 'small.yaml', 'own.yaml', ...tables, ...short], folder);
    expect(compared.code).toBe(0);
    expect(compared.err).toContain('my.tsv: 1 number in place of ours');
    const why = await leat(
      ['why', 'small.yaml', 'own.yaml', '--of', 'nitrate@sump', ...tables, ...short],
      folder,
    );
    expect(why.code).toBe(0);
  });

  it('is taken by report, which says so', async () => {
    const args = ['report', 'small.yaml', '--tables', 'my.tsv', ...short, '--out', 'page.html'];
    const { code } = await leat(args, folder);
    expect(code).toBe(0);
    const page = readFileSync(join(folder, 'page.html'), 'utf8');
    expect(page).toContain('tables=my.tsv');
    expect(page).toContain('Own log book, 2025 [U, given by the user] (given in my.tsv)');
  });

  it('is copied by no run into the folder, and read from where the file stands', async () => {
    const other = folderWith();
    writeFileSync(join(other, 'far.tsv'), readFileSync(join(folder, 'my.tsv'), 'utf8'));
    const { code, err } = await leat(['check', 'small.yaml', '--tables', join(other, 'far.tsv')], folder);
    expect(code).toBe(0);
    expect(err).toContain('far.tsv: 1 number in place of ours');
  });
});
