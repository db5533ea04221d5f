import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({ 'log.csv': 'Date,Nitrate (mg/L)\n2026-03-01,40\n2026-03-08,60\n' });
const short = ['--days', '3'];
const measure = ['--of', 'highest tan@tank'];
const fits = 'the backyard that leat new writes';

/** Every call that prints one document, with its schema. */
const documents: readonly (readonly [schema: string, args: readonly string[]])[] = [
  ['leat-run', ['run', 'small.yaml', ...short]],
  ['leat-comparison', ['compare', 'small.yaml', 'small.yaml', ...short]],
  ['leat-difference', ['why', 'small.yaml', '--of', 'nitrate@tank', '--from', '1d', ...short]],
  [
    'leat-steady',
    ['steady', 'small.yaml', '--hold', 'nitrate', '--hold', 'chloride', '--hold', 'alkalinity'],
  ],
  ['leat-advice', ['advise', 'small.yaml', ...short, '--change', 'heat']],
  ['leat-plan', ['plan', 'small.yaml', ...short, '--vary', 'fish=20:22', '--members', '1']],
  [
    'leat-size',
    ['size', 'small.yaml', '--vary', 'fish.tilapia.ration', '--from', '1 g/d', '--to', '2 g/d'].concat([
      '--keep',
      'highest tan@tank above 0 mg N/L',
      ...short,
    ]),
  ],
  [
    'leat-sweep',
    ['sweep', 'small.yaml', '--vary', 'fish.tilapia.ration=1 g/d:2 g/d:2', ...measure, ...short],
  ],
  ['leat-ensemble', ['ensemble', 'small.yaml', '--members', '2', '--workers', '1', ...short]],
  [
    'leat-sensitivity',
    ['sensitivity', 'small.yaml', ...measure, '--method', 'local', '--only', 'aob.growth', ...short],
  ],
  ['leat-numbers', ['show', 'aob.growth']],
  ['leat-numbers', ['show']],
  ['leat-log-guess', ['log', 'log.csv']],
  ['leat-log', ['log', 'log.csv', '--map', 'log.map']],
];

const write = (name: string, text: string): void => writeFileSync(join(folder, name), text);
const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

beforeAll(async () => {
  expect((await leat(['log', 'log.csv', '--write-map', 'log.map'], folder)).code).toBe(0);
  const run = await leat(['run', 'small.yaml', ...short, '--json', '--save', 'state.json'], folder);
  expect(run.code).toBe(0);
  write('run.json', run.out);
  const ensemble = await leat(
    [
      'ensemble',
      'small.yaml',
      '--members',
      '2',
      '--workers',
      '1',
      ...short,
      '--json',
      '--out',
      'small.ensemble',
    ],
    folder,
  );
  expect(ensemble.code).toBe(0);
  write('ensemble.json', ensemble.out);
});

describe('every document says its schema and the version of that', () => {
  it.each(documents)('%s: %j', async (schema, args) => {
    const { code, out, err } = await leat([...args, '--json'], folder);
    expect([code, code === 0 ? '' : err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ schema, version: 1 });
    expect(out.startsWith(`{"schema":"${schema}","version":1,`)).toBe(true);
  });

  it('a saved state, a map, a kept ensemble', () => {
    expect(JSON.parse(read('state.json'))).toMatchObject({ schema: 'leat-state', version: 3 });
    expect(read('log.map')).toMatch(/^version: 1$/m);
    expect(JSON.parse(readFileSync(join(folder, 'small.ensemble'), 'latin1').split('\n')[0])).toMatchObject({
      label: 'leat ensemble',
      schema: 3,
    });
  });

  it('leaves no call of the command with --json out', async () => {
    const help = (await leat(['--help'], folder)).out;
    const names = [...help.matchAll(/^ {2}([a-z]+) /gm)].map(([, name]) => name);
    const printing: string[] = [];
    for (const name of names)
      if (/^ +--json /m.test((await leat([name, '--help'], folder)).out)) printing.push(name);
    const elsewhere = ['fit', 'forecast', 'backtest', 'merge'];
    expect(printing.filter((name) => !elsewhere.includes(name)).sort()).toEqual(
      [...new Set(documents.map(([, [name]]) => name))].sort(),
    );
  });

  it(`of ${fits}: the fit, the forecast, the backtest`, async () => {
    expect((await leat(['new', 'backyard'], folder)).code).toBe(0);
    const logged = ['backyard.yaml', '--log', 'backyard.csv', '--map', 'backyard.map'];
    const fit = await leat(
      ['fit', ...logged, '--free', 'aob.growth', '--starts', '1', '--out', 'fit.json'],
      folder,
    );
    expect([fit.code, fit.err.split(':')[0]]).toEqual([0, 'written to fit.json']);
    expect(JSON.parse(read('fit.json'))).toMatchObject({ schema: 'leat-fit', version: 1 });
    const ahead = ['--fit', 'fit.json', '--members', '2', '--days', '7', '--json'];
    expect(JSON.parse((await leat(['forecast', ...logged, ...ahead], folder)).out)).toMatchObject({
      schema: 'leat-forecast',
      version: 1,
    });
    const past = ['--free', 'aob.growth', '--warm-up', '60', '--step', '60', '--fits', '1', '--json'];
    expect(JSON.parse((await leat(['backtest', ...logged, ...past], folder)).out)).toMatchObject({
      schema: 'leat-backtest',
      version: 1,
    });
    write('fit.json', read('fit.json').replace('"version": 1', '"version": 2'));
    expect(await leat(['run', 'backyard.yaml', '--fit', 'fit.json'], folder)).toEqual({
      code: 2,
      out: '',
      err: 'fit.json: version 2 of leat-fit, written by a later leat; expected schema leat-fit, version 1: a fit written with `leat fit --out`\n',
    });
  });
});

describe('a file of another version is refused by name, exit code 2', () => {
  const later = (name: string): void =>
    write(
      `later-${name}`,
      read(name).replace(/"version": ?(\d)/, (_, version) => `"version":${Number(version) + 1}`),
    );

  it.each([
    ['run.json', 'leat-run', ['compare', 'small.yaml', 'later-run.json']],
    ['run.json', 'leat-run', ['report', 'later-run.json']],
    ['run.json', 'leat-run', ['plot', 'later-run.json', '--of', 'tan@tank', '--out', 'x.svg']],
    [
      'ensemble.json',
      'leat-ensemble',
      ['report', 'small.yaml', ...short, '--ensemble', 'later-ensemble.json'],
    ],
  ])('%s (%s): %j', async (name, schema, args) => {
    later(name);
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(
      `later-${name}: version 2 of ${schema}, written by a later leat; ` +
        `expected schema ${schema}, version 1: run it again with this leat\n`,
    );
  });

  it('a document from before documents said their version', async () => {
    write('old.json', read('run.json').replace('"schema":"leat-run","version":1,', ''));
    const { code, err } = await leat(['compare', 'small.yaml', 'old.json'], folder);
    expect([code, err]).toEqual([
      2,
      'old.json: the file does not say its schema; expected schema leat-run, version 1: run it again with this leat\n',
    ]);
  });

  it('a document of another kind', async () => {
    const { code, err } = await leat(['compare', 'small.yaml', 'ensemble.json'], folder);
    expect([code, err]).toEqual([
      2,
      'ensemble.json: schema "leat-ensemble" is another kind of file; expected schema leat-run, version 1: run it again with this leat\n',
    ]);
  });

  it('a saved state', async () => {
    later('state.json');
    const { code, err } = await leat(['run', 'small.yaml', '--set', 'start.saved=later-state.json'], folder);
    expect(code).toBe(2);
    expect(err).toContain('later-state.json: version 4 of leat-state, written by a later leat');
  });

  it('a kept ensemble, resumed or merged', async () => {
    const bytes = readFileSync(join(folder, 'small.ensemble'));
    const text = bytes.toString('latin1').replace('"schema":3', '"schema":4');
    writeFileSync(join(folder, 'later.ensemble'), Buffer.from(text, 'latin1'));
    const words =
      'later.ensemble: version 4 of a file of leat ensemble --out; this leat reads version 3: run it again with this leat\n';
    expect(await leat(['merge', 'later.ensemble'], folder)).toEqual({ code: 2, out: '', err: words });
    const resumed = await leat(
      ['ensemble', 'small.yaml', ...short, '--members', '2', '--resume', 'later.ensemble'],
      folder,
    );
    expect([resumed.code, resumed.err]).toEqual([2, words]);
  });

  it('a map of a log, and a system', async () => {
    write('later.map', read('log.map').replace('version: 1', 'version: 2'));
    const map = await leat(['log', 'log.csv', '--map', 'later.map'], folder);
    expect([map.code, map.err]).toEqual([
      2,
      'later.map:1:10: version: a map of another version; got 2; expected version 1\n',
    ]);
    write('later.yaml', `version: 2\n${read('small.yaml')}`);
    const system = await leat(['run', 'later.yaml'], folder);
    expect([system.code, system.err]).toEqual([
      2,
      'later.yaml:1:10: version: a file of another version; got 2; expected version 1\n',
    ]);
    write('same.yaml', `version: 1\n${read('small.yaml')}`);
    expect((await leat(['check', 'same.yaml'], folder)).code).toBe(0);
  });
});
