import { describe, expect, it } from 'vitest';
import { readScenario } from '../../../../../packages/core/src/scenario/read-scenario.js';
import type { Doser } from '../../../../../packages/core/src/scenario/scenario.js';
import { messagesOf, smallSystem } from '../../../../product/faults/small-system.js';

const textOf = (...entries: readonly string[]): string =>
  `${smallSystem}control:\n${entries.map((entry) => `  - ${entry}\n`).join('')}`;
const dosers = (...entries: readonly string[]): readonly Doser[] | undefined =>
  readScenario(textOf(...entries), { file: 'small.yaml' }).dosers;
const base = '{ hold: pH, in: sump, at: 6.8, with: potassium-hydroxide, most: 40 g/h }';

describe('control as written', () => {
  it('holds pH with one base, in a band of 0.1 where none is written', () => {
    expect(dosers(base)).toEqual([
      {
        ...{ hold: 'pH', vessel: 'sump', setPoint: 6.8, products: ['potassium-hydroxide'], band: 0.1 },
        ...{ most: 960, sign: 1 },
      },
    ]);
  });

  it('holds alkalinity with two bases, and pH with an acid above it', () => {
    const two =
      '{ hold: alkalinity, in: sump, at: 75 mg/L as CaCO3, band: 5 mg/L as CaCO3, most: 2 kg/d, ' +
      'with: [calcium-hydroxide, potassium-hydroxide] }';
    const acid = '{ hold: pH, in: sump, at: 7.2, with: nitric-acid, band: 0.2, most: 10 g/d }';
    const found = dosers(two, acid) ?? [];
    expect(found.map(({ sign, band }) => [sign, band.toFixed(4)])).toEqual([
      [1, '0.0999'],
      [-1, '0.2000'],
    ]);
    expect(found[0].setPoint).toBeCloseTo(75 / 50.043, 12);
    expect(found[0].products).toEqual(['calcium-hydroxide', 'potassium-hydroxide']);
  });

  it('names the vessel of the probe where it is another', () => {
    const entry = (probe: string): string => base.replace('at:', `probe: ${probe}, at:`);
    expect(dosers(entry('tank'))?.[0]).toMatchObject({ vessel: 'sump', probe: 'tank' });
    expect(dosers(entry('sump'))?.[0]).not.toHaveProperty('probe');
    expect(messagesOf(textOf(entry('tnak'))).join()).toContain('tnak');
  });

  it('lets a base and an acid of one sump go by two waters, and refuses them by one', () => {
    const acid = '{ hold: pH, in: sump, probe: tank, at: 6.8, with: nitric-acid, most: 10 g/d }';
    expect(dosers(base, acid)).toHaveLength(2);
    const near = base.replace('at:', 'probe: tank, at:');
    expect(messagesOf(textOf(near, acid)).join()).toContain('work against each other');
  });

  it('is no part of a scenario without it', () => {
    expect(readScenario(smallSystem, { file: 'small.yaml' }).dosers).toBeUndefined();
  });

  it.each([
    [
      'a base and an acid in one',
      '{ hold: pH, in: sump, at: 6.8, with: [potassium-hydroxide, nitric-acid], most: 1 g/d }',
      'small.yaml:32:36: control[0].with: a base and an acid in one doser; got potassium-hydroxide, nitric-acid; ' +
        'expected products that all bring base, or all acid; another entry for the others',
    ],
    [
      'salt',
      '{ hold: pH, in: sump, at: 6.8, with: sodium-chloride, most: 1 g/d }',
      'a product without alkalinity holds neither pH nor alkalinity',
    ],
    [
      'citric acid, which counts as carbon',
      '{ hold: pH, in: sump, at: 6.8, with: [nitric-acid, citric-acid], most: 1 g/d }',
      'a product without alkalinity holds neither pH nor alkalinity',
    ],
    [
      'a product twice',
      '{ hold: pH, in: sump, at: 6.8, with: [nitric-acid, nitric-acid], most: 1 g/d }',
      'a product given twice',
    ],
    [
      'no vessel',
      '{ hold: pH, in: sumpf, at: 6.8, with: nitric-acid, most: 1 g/d }',
      'unknown vessel; got "sumpf"; did you mean sump?',
    ],
    [
      'no product',
      '{ hold: pH, in: sump, at: 6.8, with: nitric-acit, most: 1 g/d }',
      'unknown product; got "nitric-acit"; did you mean nitric-acid?',
    ],
    ['a pH with a unit', '{ hold: pH, in: sump, at: 75 mg/L, with: nitric-acid, most: 1 g/d }', 'not a pH'],
    [
      'an alkalinity without one',
      '{ hold: alkalinity, in: sump, at: 75, with: nitric-acid, most: 1 g/d }',
      'a number without a unit',
    ],
    [
      'an alkalinity of whatever',
      '{ hold: alkalinity, in: sump, at: 75 mg/L, with: nitric-acid, most: 1 g/d }',
      'ambiguous unit',
    ],
    [
      'a band of nothing',
      '{ hold: pH, in: sump, at: 6.8, with: nitric-acid, band: 0, most: 1 g/d }',
      'control[0].band: must be more than zero',
    ],
    ['no most', '{ hold: pH, in: sump, at: 6.8, with: nitric-acid }', 'control[0].most: missing'],
    [
      'what is not held',
      '{ hold: nitrate, in: sump, at: 6.8, with: nitric-acid, most: 1 g/d }',
      'unknown word',
    ],
  ])('is refused with %s', (_what, entry, words) => {
    expect(messagesOf(textOf(entry)).join('\n')).toContain(words);
  });

  it('is refused where a base and an acid would work against each other, or a base stands twice', () => {
    const acid = (at: number): string => `{ hold: pH, in: sump, at: ${at}, with: nitric-acid, most: 1 g/d }`;
    expect(dosers(base, acid(6.9))).toHaveLength(2);
    expect(messagesOf(textOf(base, acid(6.85))).join('\n')).toContain(
      'control[1].at: a base and an acid so near that they work against each other; got base below 6.8, acid above ' +
        '6.85; expected the acid a band (0.1) or more above the base',
    );
    expect(messagesOf(textOf(base, base)).join('\n')).toContain(
      'pH of sump is held with base twice; expected one entry, with a list of products',
    );
  });

  it('stops with a power cut and by its own switch', () => {
    const text = textOf(base).replace(
      'pump-off: main }\n',
      'power-cut: all }\n  - { from: 2 d, for: 1 d, control-off: sump }\n',
    );
    const { actions } = readScenario(text, { file: 'small.yaml' });
    const switches = actions.filter(({ action }) => action.kind === 'control');
    expect(switches.map(({ at, action }) => [at, action])).toEqual([
      [2, { kind: 'control', vessel: 'sump', running: false }],
      [3, { kind: 'control', vessel: 'sump', running: true }],
      [10, { kind: 'control', vessel: 'sump', running: false }],
      [10.25, { kind: 'control', vessel: 'sump', running: true }],
    ]);
    expect(messagesOf(`${smallSystem}  - { at: 1 d, control-off: sump }\n`).join('\n')).toContain(
      'a vessel without a doser',
    );
  });
});
