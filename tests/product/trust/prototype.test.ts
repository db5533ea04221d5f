import { afterEach, describe, expect, it } from 'vitest';
import { smallSystem } from '../../support/small-text.js';
import { folderWith, leat } from '../../support/leat.js';

const born = Object.getOwnPropertyNames(Object.prototype).sort();

afterEach(() => {
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(born);
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
});

/** Names that every object of JavaScript has. */
const inherited = ['constructor', 'toString', 'valueOf', 'hasOwnProperty'];

const texts: [what: string, text: string][] = [
  ['a key at the top', `${smallSystem}__proto__: { polluted: 1 }\n`],
  ['a vessel', smallSystem.replace('vessels:', 'vessels:\n  __proto__: { polluted: 1 }')],
  ['a number', `${smallSystem}parameters: { __proto__: { polluted: 1 } }\n`],
  ['a merge', `${smallSystem}<<: { __proto__: { polluted: 1 } }\n`],
  ['constructor.prototype', `${smallSystem}constructor: { prototype: { polluted: 1 } }\n`],
];

describe('prototype pollution', () => {
  it.each(texts)('%s is a fault and changes no object', async (_, text) => {
    const { code, err } = await leat(['check', 'small.yaml'], folderWith({ 'small.yaml': text }));
    expect(code).toBe(2);
    expect(err).toMatch(/^small\.yaml:\d+:\d+: /);
  });

  it.each(['__proto__.polluted=1', 'vessels.__proto__.polluted=1', 'constructor.prototype.polluted=1'])(
    '--set %s is a fault and changes no object',
    async (set) => {
      const { code, err } = await leat(['check', 'small.yaml', '--set', set], folderWith());
      expect(code).toBe(2);
      expect(err).toMatch(/^--set: /);
    },
  );

  it('a saved state and a fit cannot do it either', async () => {
    const state =
      '{"schema":"leat-state","version":1,"volumes":{"__proto__":1},"rainTank":0,"ages":{},"states":[],"__proto__":{"polluted":1}}';
    const saved = smallSystem.replace('biofilm: cycled', 'saved: state.json');
    const folder = folderWith({
      'small.yaml': saved,
      'state.json': state,
      'fit.json': '{"__proto__":{"polluted":1}}',
    });
    expect((await leat(['check', 'small.yaml'], folder)).code).toBeLessThanOrEqual(2);
    expect((await leat(['check', 'small.yaml', '--fit', 'fit.json'], folder)).code).toBe(2);
  });

  it('a map of a log cannot do it either', async () => {
    const map =
      'date: { column: Date }\ncolumns: { __proto__: skip, constructor: skip }\nmeasures: { __proto__: 1 g }\n';
    const folder = folderWith({ 'log.csv': 'Date,constructor\n2026-03-01,1\n', 'log.map': map });
    expect((await leat(['log', 'log.csv', '--map', 'log.map'], folder)).code).toBe(2);
  });

  it('names that every object has are names like others', async () => {
    const kinds = /kind: [\w-]+/g;
    const written = smallSystem.match(kinds) ?? [];
    let text = smallSystem.replace(kinds, 'kind: #');
    ['tank', 'filter', 'bed', 'sump'].forEach((name, i) => {
      text = text.replaceAll(name, inherited[i]);
    });
    for (const kind of written) text = text.replace('kind: #', kind);
    text = text.replace('tilapia:', 'isPrototypeOf:').replace('lettuce:', 'propertyIsEnumerable:');
    const folder = folderWith({ 'plain.yaml': smallSystem, 'small.yaml': text });
    const args = ['--json', '--quiet', '--days', '2'];
    const [odd, plain] = [
      await leat(['run', 'small.yaml', ...args], folder),
      await leat(['run', 'plain.yaml', ...args], folder),
    ];
    expect(odd.err).toBe('');
    expect([odd.code, plain.code]).toEqual([0, 0]);
    const valuesOf = (out: string): unknown =>
      Object.values((JSON.parse(out) as { series: Record<string, { values: number[] }> }).series).map(
        ({ values }) => values,
      );
    expect(valuesOf(odd.out)).toEqual(valuesOf(plain.out));
  });
});
