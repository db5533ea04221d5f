import { describe, expect, it } from 'vitest';
import {
  readScenarioFully,
  scenarioHash,
  createParameters,
  compileModel,
  manifestOf,
  rowOf,
  simulate,
} from '@leat/core';
import { copiedRows, ownTable } from '../../support/own-table.js';
import { edited, messagesOf, smallSystem } from './small-system.js';

const growth = 'aob.growth|0.5|1/d|0.4|0.6|triangular|measured|Own log book, 2025|-|U';
const perch = copiedRows('fish.murray-cod', 'fish.estuary-perch');
const files: Readonly<Record<string, string>> = {
  'my.tsv': ownTable(growth, ...perch),
  'other.tsv': ownTable(growth.replace('0.5', '0.55')),
  'bad.tsv': ownTable(growth.replace('1/d', 'mg/L'), ...perch.slice(0, 10)),
  'hot.tsv': ownTable('fish.nile-tilapia.temperature-low|40|degC|39|41|triangular|c|fao-589|-|M'),
};
const load = (path: string): string => {
  const text = files[path.replace('sub/', '')];
  if (text === undefined) throw new Error('no such file');
  return text;
};
const withTables = (tables: string, ...edits: [string, string][]): string =>
  edited(['days: 30', `days: 30\ntables: ${tables}`], ...edits);
const read = (text: string, tables: readonly string[] = []) =>
  readScenarioFully(text, { file: 'small.yaml', load, tables, days: 2 });
const asPerch: [string, string] = ['species: nile-tilapia', 'species: estuary-perch'];

describe('tables of the user in a scenario', () => {
  it('give numbers in place of ours, and say so', () => {
    const { scenario, notes } = read(withTables('my.tsv'));
    expect(notes).toEqual([`my.tsv: 1 number in place of ours, ${perch.length} new (fish.estuary-perch)`]);
    const parameters = createParameters(scenario.overrides);
    expect(rowOf(parameters, 'aob.growth')).toEqual({
      table: 'parameters',
      id: 'aob.growth',
      value: 0.5,
      unit: '1/d',
      low: 0.4,
      high: 0.6,
      distribution: 'triangular',
      conditions: 'measured',
      source: 'Own log book, 2025',
      page: '-',
      mark: 'U',
      given: 'my.tsv:2',
    });
  });

  it('bring a species that can be stocked, run and judged', () => {
    const { scenario } = read(withTables('my.tsv', asPerch));
    const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
    expect(run.outcome.kind).toBe('done');
    expect(manifestOf(run).given).toContain('fish.estuary-perch.body-nitrogen');
  });

  it.each([
    ['crop.lettuce-butterhead', 'crop.oak-leaf', 'crop: lettuce-butterhead', 'crop: oak-leaf'],
    ['feed.grower-32', 'feed.my-feed', 'feed: grower-32', 'feed: my-feed'],
    ['dose.potassium-bicarbonate', 'dose.my-salt', 'product: potassium-bicarbonate', 'product: my-salt'],
    ['water.rain', 'water.snow', 'water: { like: mains }', 'water: { like: snow }'],
    [
      'media.pumice',
      'media.scoria',
      'sump: { kind: sump, volume: 500 L,',
      'sump: { kind: sump, volume: 500 L, media: { type: scoria, volume: 10 L },',
    ],
  ])('bring %s under the name of %s, with the same result', (ours, theirs, from, to) => {
    const table = ownTable(...copiedRows(ours, theirs));
    const end = (text: string): readonly number[] => {
      const { scenario } = readScenarioFully(text, { file: 'small.yaml', load: () => table, days: 8 });
      const { samples } = simulate(compileModel(scenario, createParameters(scenario.overrides)));
      return Array.from(samples[samples.length - 1].y);
    };
    const original = theirs === 'media.scoria' ? to.replace('scoria', 'pumice') : from;
    const known = theirs === 'water.snow' ? to.replace('snow', 'rain') : original;
    expect(end(withTables('t.tsv', [from, to]))).toEqual(end(edited([from, known])));
  });

  it('are other bytes: another number, another hash; the name of the file is not part of it', () => {
    const hash = (text: string, tables: readonly string[] = []): string =>
      scenarioHash(read(text, tables).scenario);
    expect(hash(withTables('other.tsv'))).not.toBe(hash(smallSystem));
    expect(hash(withTables('other.tsv'))).toBe(hash(withTables('sub/other.tsv')));
    expect(hash(withTables('other.tsv'))).toBe(hash(smallSystem, ['other.tsv']));
  });

  it('win in the order: file, beside the file, single numbers', () => {
    const value = (text: string, tables: readonly string[] = []): number =>
      createParameters(read(text, tables).scenario.overrides).value('aob.growth');
    expect(value(withTables('[my.tsv, other.tsv]'))).toBe(0.55);
    expect(value(withTables('other.tsv'), ['my.tsv'])).toBe(0.5);
    expect(value(withTables('other.tsv\nparameters: { aob.growth: 0.7 }'))).toBe(0.7);
  });

  it('are seen from the file that names them, included or not', () => {
    const seen: string[] = [];
    const base = 'tables: my.tsv\n';
    readScenarioFully(edited(['days: 30', 'days: 30\ninclude: sub/base.yaml']), {
      file: 'small.yaml',
      load: (path) => {
        seen.push(path);
        return path.endsWith('.yaml') ? base : load(path);
      },
    });
    expect(seen).toEqual(['sub/base.yaml', 'sub/my.tsv']);
  });
});

const cases: { name: string; text: string; messages: string[] }[] = [
  {
    name: 'a table that cannot be read',
    text: withTables('[my.tsv, none.tsv]'),
    messages: ['small.yaml:3:18: tables: cannot be read: no such file; got "none.tsv"'],
  },
  {
    name: 'a table that is no file name',
    text: withTables('{ a: 1 }'),
    messages: [
      'small.yaml:3:1: tables: wrong kind of value; got a map with a; expected a file name such as "my-numbers.tsv", or a list of them',
    ],
  },
  {
    name: 'a species that lacks numbers, and a faulty row, at once and without second faults',
    text: withTables('bad.tsv', asPerch, ['number: 20', 'number: -20']),
    messages: [
      'bad.tsv:2:16: unit of aob.growth: not a unit of this number; got mg/L; expected 1/d as in our table, or a share a day such as "1.5 %/d" or "15 g/kg/d"',
      'bad.tsv:3: fish.estuary-perch: fish estuary-perch lacks 15 of the numbers that the model reads; expected also rows for temperature-high, temperature-optimum-low, temperature-optimum-high, limit-ammonia, limit-nitrite, limit-nitrate, limit-oxygen, density-high, lethal-temperature-low, lethal-temperature-high, lethal-oxygen, lethal-ammonia, lethal-nitrite, chloride-halving, lethal-carbon-dioxide',
      'small.yaml:22:56: fish.tilapia.number: out of range; got -20; expected a whole number from 0 to 10000000',
    ],
  },
  {
    name: 'temperatures out of order',
    text: withTables('hot.tsv'),
    messages: [
      'hot.tsv:2: fish.nile-tilapia: temperature-low of fish nile-tilapia reaches temperature-high; got 41 and 36; expected temperature-low < temperature-high, wherever in their ranges they are drawn',
      'hot.tsv:2: fish.nile-tilapia: temperature-low of fish nile-tilapia reaches temperature-optimum-low; got 41 and 27; expected temperature-low < temperature-optimum-low, wherever in their ranges they are drawn',
    ],
  },
  {
    name: 'a species of which one row is misspelt',
    text: edited(['days: 30', 'days: 30\nparameters: { fish.nile-tilapa.mortality: 0.1 }']),
    messages: [
      'small.yaml:3:15: parameters.fish.nile-tilapa.mortality: no such number; a new one needs a row in a table; did you mean fish.nile-tilapia.mortality?',
    ],
  },
];

describe('messages about tables of the user', () => {
  it.each(cases)('$name', ({ text, messages }) => {
    expect(messagesOf(text, { load })).toEqual(messages);
  });

  it('a table beside the file that cannot be read', () => {
    expect(messagesOf(smallSystem, { load, tables: ['none.tsv'] })).toEqual([
      '--tables: cannot be read: no such file; got "none.tsv"',
    ]);
  });

  it('a species named by a single row only', () => {
    const one = ownTable('fish.nile-tilapa.mortality|0.001|1/d|0.0005|0.002|uniform|c|fao-589|-|M');
    const [message] = messagesOf(smallSystem, { load: () => one, tables: ['one.tsv'] });
    expect(message).toContain('one.tsv:2: fish.nile-tilapa: fish nile-tilapa lacks 24 of the numbers');
    expect(message).toContain('did you mean nile-tilapia?');
  });
});
