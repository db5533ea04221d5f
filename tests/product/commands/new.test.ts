import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { shippedText } from '../../support/shipped-scenario.js';
import { folderWith, leat } from '../../support/leat.js';

const shipped = [
  'air-and-acid',
  'all-at-once',
  'backyard',
  'bare-beds',
  'bare-beds-dosed',
  'chlorinated-refill',
  'cold-month',
  'double-stock',
  'double-stock-steps',
  'dry-spell',
  'fishless',
  'glasshouse',
  'limestone',
  'power-cut',
  'scrubbed-filter',
  'start-up',
  'well-water',
];

describe('leat new --list', () => {
  it('prints every scenario with the question it opens with', async () => {
    const { code, out, err } = await leat(['new', '--list'], folderWith());
    expect([code, err]).toEqual([0, '']);
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => line.split(' ')[0])).toEqual(shipped);
    for (const line of lines) expect(line).toMatch(/ {2}(What|How|Can) .*\?$/);
  });

  it.each(shipped)('%s asks, says what to look at, and says that it is invented', (name) => {
    const [comment] = shippedText(name).split(/^[^#]/m);
    expect(comment).toMatch(/^# [^?]*\?\n# Look at /);
    expect(comment).toMatch(/invented/i);
  });
});

const schemaLine = '# yaml-language-server: $schema=./leat.schema.json\n';

describe('leat new NAME', () => {
  it('writes a copy and what it includes, which run', async () => {
    const folder = folderWith();
    const { code, err } = await leat(['new', 'power-cut'], folder);
    expect([code, err]).toEqual([0, 'written: glasshouse.yaml, power-cut.yaml, leat.schema.json\n']);
    expect(readFileSync(join(folder, 'power-cut.yaml'), 'utf8')).toBe(schemaLine + shippedText('power-cut'));
    expect((await leat(['check', 'power-cut.yaml'], folder)).code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual([
      'glasshouse.yaml',
      'leat.schema.json',
      'power-cut.yaml',
      'small.yaml',
    ]);
  });

  it('writes to --out, and uses an included file that is there unchanged', async () => {
    const folder = folderWith({ 'glasshouse.yaml': shippedText('glasshouse') });
    const { code, err } = await leat(['new', 'fishless', '--out', 'mine.yaml'], folder);
    expect([code, err]).toEqual([0, 'written: mine.yaml, leat.schema.json\n']);
    expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe(schemaLine + shippedText('fishless'));
  });

  it('overwrites nothing, and writes nothing where one place is taken', async () => {
    const folder = folderWith({ 'glasshouse.yaml': 'title: my own\n' });
    const { code, err } = await leat(['new', 'fishless'], folder);
    expect([code, err]).toEqual([
      2,
      'glasshouse.yaml: --out: is there already and is not overwritten; expected another name, or --force\n',
    ]);
    expect(existsSync(join(folder, 'fishless.yaml'))).toBe(false);
    writeFileSync(join(folder, 'start-up.yaml'), shippedText('start-up'));
    expect((await leat(['new', 'start-up'], folder)).code).toBe(2);
    expect(readFileSync(join(folder, 'glasshouse.yaml'), 'utf8')).toBe('title: my own\n');
  });

  it('leaves the schema alone where it is there, renews that of another Leat, and overwrites no other file', async () => {
    const folder = folderWith();
    const schema = join(folder, 'leat.schema.json');
    await leat(['new', 'fishless'], folder);
    const ours = readFileSync(schema, 'utf8');
    const again = await leat(['new', 'start-up'], folder);
    expect([again.code, again.err]).toEqual([0, 'written: start-up.yaml\n']);
    writeFileSync(schema, ours.replace('Leat system file', 'An older one'));
    expect((await leat(['new', 'limestone'], folder)).code).toBe(0);
    expect(readFileSync(schema, 'utf8')).toBe(ours);
    writeFileSync(schema, '{ "title": "my own" }');
    const kept = await leat(['new', 'dry-spell'], folder);
    expect([kept.code, existsSync(join(folder, 'dry-spell.yaml'))]).toEqual([2, false]);
    expect(kept.err).toMatch(/^leat\.schema\.json: --out: is there already and is not overwritten/);
  });

  it('says which name may be meant, and that a folder is missing', async () => {
    const folder = folderWith();
    const wrong = await leat(['new', 'powercut'], folder);
    expect([wrong.code, wrong.err]).toEqual([
      2,
      'powercut: no scenario of that name; did you mean power-cut? (leat new --list shows them)\n',
    ]);
    const missing = await leat(['new', 'glasshouse', '--out', 'no/where.yaml'], folder);
    expect([missing.code, missing.err]).toEqual([
      2,
      'no/where.yaml: cannot be written: no such file or folder\n',
    ]);
    expect((await leat(['new'], folder)).code).toBe(5);
  });
});
