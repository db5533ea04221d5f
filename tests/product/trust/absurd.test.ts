import { describe, expect, it } from 'vitest';
import { checkScenario } from '../../../packages/core/src/scenario/check-scenario.js';
import { domainAtStart } from '../../../packages/core/src/analysis/design/domain-at-start.js';
import { limitsOf } from '../../../packages/core/src/result/limits.js';
import { verdictOf } from '../../../packages/core/src/result/verdict.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { doneRun } from '../../support/run-of.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { messageOf } from '../../support/message-of.js';
import { edited, messagesOf } from '../faults/small-system.js';

type Edit = readonly [from: string, to: string];
const action = (text: string): Edit => ['actions:\n', `actions:\n  - { ${text} }\n`];

/** What each file says that no system can be, and what the one fault must tell: where, what came, the bound, the reason. */
const absurd: readonly (readonly [name: string, edit: Edit, fault: RegExp])[] = [
  [
    'a kilogram of chloride in a litre',
    ['chloride: 20 mg/L', 'chloride: 1000 g/L'],
    /waters\.mains\.chloride: out of range; got "1000 g\/L"; expected at most 220000 g\/m3: water is full of salt there$/,
  ],
  [
    'ten million fish in a cubic metre',
    ['number: 20', 'number: 10000000'],
    /fish\.tilapia\.number: more fish than the water can hold; .*at most 500000 g of fish in the 1 m3 of tank/,
  ],
  [
    'a tonne of feed a day for twenty fish',
    ['ration: 80 g/d', 'ration: 1000 kg/d'],
    /fish\.tilapia\.ration: more feed than fish could eat; got "1000 kg\/d"; expected at most 8000 g\/d/,
  ],
  [
    'fish fed three times their mass a day',
    ['ration: 80 g/d', 'ration: 300 %/d'],
    /fish\.tilapia\.ration: more feed than fish could eat/,
  ],
  [
    'a fish of a tonne',
    ['number: 20, mass: 200 g', 'number: 1, mass: 1000 kg'],
    /fish\.tilapia\.mass: heavier than any fish/,
  ],
  [
    'a vessel of no water at the start',
    ['  water: { like: mains }', '  water: { like: mains }\n  vessels: { sump: { volume: 0 L } }'],
    /start\.vessels\.sump\.volume: must be more than zero/,
  ],
  [
    'nitrite of a hundred grams per litre at the start',
    ['  water: { like: mains }', '  water: { like: mains, nitrite: 100000 mg N/L }'],
    /start\.water\.nitrite: out of range/,
  ],
  [
    'a tonne of salt dosed into a cubic metre',
    action('at: 3 d, dose: { into: tank, product: sodium-chloride, mass: 1000 kg }'),
    /actions\[0\]\.dose\.mass: more than the water can take up/,
  ],
  [
    'three tonnes of fish stocked into a cubic metre',
    action('at: 3 d, stock: { cohort: tilapia, number: 10000, mass: 300 g }'),
    /actions\[0\]\.stock\.number: more fish than the water can hold/,
  ],
];

describe('what no system can be', () => {
  it.each(absurd)('%s is one fault with its bound and reason', (_name, edit, fault) => {
    const messages = messagesOf(edited(edit));
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(fault);
  });

  it('is a fault in a scenario built in code too', () => {
    const sound = readScenario(edited(), { file: 'small.yaml' });
    const [cohort] = sound.fish;
    const crowded = { ...sound, fish: [{ ...cohort, number: 10_000_000 }] };
    expect(
      messageOf(() => {
        checkScenario(crowded);
      }),
    ).toContain('more fish than the water can hold');
  });
});

describe('outside what the model knows', () => {
  const salty = edited(['chloride: 20 mg/L', 'chloride: 20 g/L']);
  const read = (text: string) => readScenario(text, { file: 'small.yaml' });

  it('a run is no forecast from the day on which it left it, and says of what', () => {
    const verdict = verdictOf(doneRun(read(salty)));
    expect(verdict.holdsUntil?.why).toBe('domain');
    expect(verdict.holdsUntil?.time).toBe(0);
    expect(verdict.holdsUntil?.trouble?.quantity).toBe('chloride');
  });

  it('is told of the start without a run', () => {
    const model = (text: string) => compileModel(read(text), createParameters());
    expect(domainAtStart(model(salty)).map(({ quantity, place }) => `${quantity}@${place}`)).toEqual([
      'chloride@tank',
      'chloride@bed',
      'chloride@sump',
    ]);
    expect(domainAtStart(model(edited()))).toEqual([]);
  });

  it.each([
    ['temperature', ['water-temperature: 24 degC', 'water-temperature: 0.5 degC']],
    ['temperature', ['water-temperature: 24 degC', 'water-temperature: 41 degC']],
    ['stocking', ['number: 20', 'number: 1500']],
  ] as const)('covers %s', (quantity, edit) => {
    const limits = limitsOf(doneRun(readScenario(edited(edit), { file: 'small.yaml', days: 2 })));
    const passed = limits.filter(({ harm, passed: is }) => harm === 'domain' && is);
    expect(passed.map((limit) => limit.quantity)).toContain(quantity);
  });
});
