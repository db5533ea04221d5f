import { describe, expect, it } from 'vitest';
import type { Action, Doser, Rule, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { type Free, saidOf } from '../../../support/scenario-faults.js';

const rule: Rule = {
  read: 'ammonia',
  vessel: 'tank-1',
  side: 'above',
  level: 2,
  kit: { every: 1 },
  doing: [{ kind: 'pump', pump: 'main', running: false }],
  undoing: [],
  stands: true,
  wait: 0,
  most: Infinity,
};

const acting =
  (action: Action, at = 1) =>
  (scenario: Free<Scenario>): void => {
    scenario.actions = [{ at, action: action as Free<Action> }];
  };
const ruling =
  (other: Partial<Rule>) =>
  (scenario: Free<Scenario>): void => {
    scenario.rules = [{ ...rule, ...other } as Free<Rule>];
  };

describe('actions', () => {
  it.each<[string, (s: Free<Scenario>) => void, string]>([
    [
      'before the run',
      acting({ kind: 'plant', planting: 'basil' }, -1),
      'actions[0].at: before the start of the run; got -1; expected day 0 to before day 30',
    ],
    [
      'of no kind',
      acting({ kind: 'plnat' as 'plant', planting: 'basil' }),
      'actions[0].action.kind: unknown word; got "plnat"; expected one of lose-fish, harvest-fish, grade, harvest-crop, leave-empty, drain-solids, clean, medicate, change-water, cart-water, dose, stock, plant, source-water, top-up, feed, aeration, control, pump; did you mean plant?',
    ],
    [
      'on no pump',
      acting({ kind: 'pump', pump: 'mian', running: false }),
      'actions[0].action.pump: unknown pump; got "mian"; did you mean main?',
    ],
    [
      'on no cohort',
      acting({ kind: 'lose-fish', cohort: 'grwon', share: 1 }),
      'actions[0].action.cohort: unknown cohort; got "grwon"; did you mean grown?',
    ],
    [
      'on no planting',
      acting({ kind: 'plant', planting: 'letuce' }),
      'actions[0].action.planting: unknown planting; got "letuce"; did you mean lettuce?',
    ],
    [
      'of no product',
      acting({ kind: 'dose', vessel: 'sump', product: 'sodium-bicarbonat', mass: 1 }),
      'actions[0].action.product: unknown product; got "sodium-bicarbonat"; did you mean sodium-bicarbonate?',
    ],
    [
      'where there is no air',
      acting({ kind: 'aeration', vessel: 'sump', running: false }),
      'actions[0].action.vessel: a vessel without aeration; got "sump"',
    ],
    [
      'more than there is',
      acting({ kind: 'change-water', vessel: 'sump', volume: 5, water: 'mains' }),
      'actions[0].action.volume: more than sump holds; got 5; expected at most 1.2 m3',
    ],
    [
      'in two ways',
      acting({ kind: 'change-water', vessel: 'sump', volume: 1, share: 1, water: 'mains' }),
      'actions[0].action: not one way to say how much; expected one of volume, share',
    ],
    [
      'into themselves',
      acting({ kind: 'grade', cohort: 'grown', to: 'grown', share: 0.5, relativeMass: 1 }),
      'actions[0].action.to: a cohort graded into itself; got "grown"',
    ],
    [
      'that change nothing',
      acting({ kind: 'feed', cohort: 'grown' }),
      'actions[0].action: nothing that changes; expected one or more of ration, feed, factor',
    ],
    [
      'of other water',
      acting({ kind: 'cart-water', volume: 1, into: 'rain-tank', water: 'mains' }),
      'actions[0].action.water: not what the rain tank holds; got "mains"; expected rain, or into: reservoir',
    ],
    [
      'of no size',
      acting({ kind: 'medicate', vessel: 'sump', kills: 2 }),
      'actions[0].action.kills: out of range; got 2; expected a share from 0 to 1',
    ],
    [
      'on no float',
      (s) => {
        delete s.topUp;
        acting({ kind: 'top-up', stopped: true })(s);
      },
      'actions[0].action: no top-up in this scenario; expected a topUp',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change).split('\n')).toContain(said);
  });
});

describe('rules', () => {
  const dose: Action = { kind: 'dose', vessel: 'sump', product: 'sodium-bicarbonate', mass: 10 };

  it.each<[string, (s: Free<Scenario>) => void, string]>([
    [
      'in no vessel',
      ruling({ vessel: 'tank' }),
      'rules[0].vessel: unknown vessel; got "tank"; did you mean tank-1?',
    ],
    [
      'on nothing that is read',
      ruling({ read: 'amonia' as 'ammonia' }),
      'rules[0].read: unknown word; got "amonia"; expected one of ammonia, nitrite, nitrate, pH, alkalinity, oxygen, temperature, chloride, volume, conductivity, fish-mass, rain-tank; did you mean ammonia?',
    ],
    [
      'at no level',
      ruling({ read: 'pH', level: 15 }),
      'rules[0].level: out of range; got 15; expected a number from 0 to 14',
    ],
    [
      'until the wrong side',
      ruling({ until: 3 }),
      'rules[0].until: a rule that acts above a level lets go below it; got 3; expected a level below 2',
    ],
    [
      'read in parts of days',
      ruling({ kit: { every: 0.5 } }),
      'rules[0].kit.every: out of range; got 0.5; expected a whole number of 1 or more',
    ],
    [
      'with no error',
      ruling({ kit: { every: 1, error: { kind: 'relative', deviation: 0 } } }),
      'rules[0].kit.error.deviation: out of range; got 0; expected a number above 0 up to 1',
    ],
    [
      'with a share of pH',
      ruling({ read: 'pH', level: 7, kit: { every: 1, error: { kind: 'relative', deviation: 0.1 } } }),
      'rules[0].kit.error: no share can be taken of pH; expected an error in pH, such as 0.2',
    ],
    [
      'for ever',
      ruling({ doing: [dose], stands: false }),
      'rules[0]: a rule that could fire for ever; got dose at every reading; expected one or more of wait, most, when.until',
    ],
    [
      'that do something unknown',
      ruling({ doing: [{ ...dose, vessel: 'smup' }], most: 2 }),
      'rules[0].doing[0].vessel: unknown vessel; got "smup"; did you mean sump?',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change).split('\n')).toContain(said);
  });
});

const doser: Doser = {
  hold: 'pH',
  vessel: 'sump',
  setPoint: 6.8,
  products: ['potassium-hydroxide'],
  band: 0.1,
  most: 20,
  sign: 1,
};

const dosing =
  (...others: readonly Partial<Doser>[]) =>
  (scenario: Free<Scenario>): void => {
    scenario.dosers = others.map((other) => ({ ...doser, ...other }) as Free<Doser>);
  };

describe('dosers', () => {
  it('are sound as they are', () => {
    expect(saidOf(dosing({}))).toBe('no fault');
  });

  it.each<[string, (s: Free<Scenario>) => void, string]>([
    ['in no vessel', dosing({ vessel: 'smup' }), 'dosers[0].vessel: unknown vessel; got "smup"'],
    [
      'of no product',
      dosing({ products: ['potash'] }),
      'dosers[0].products[0]: unknown product; got "potash"',
    ],
    [
      'of a base and an acid',
      dosing({ products: ['potassium-hydroxide', 'nitric-acid'] }),
      'dosers[0].products: a base and an acid in one doser; got potassium-hydroxide, nitric-acid',
    ],
    [
      'of the other sign',
      dosing({ sign: -1 }),
      'dosers[0].sign: not that of its products; got -1; expected 1',
    ],
    [
      'of nothing that brings alkalinity',
      dosing({ products: ['sodium-chloride'] }),
      'dosers[0].products[0]: a product without alkalinity holds neither pH nor alkalinity',
    ],
    [
      'at no pH',
      dosing({ setPoint: 15 }),
      'dosers[0].setPoint: out of range; got 15; expected a number from 0 to 14',
    ],
    ['of no band', dosing({ band: 0 }), 'dosers[0].band: '],
    ['of no end', dosing({ most: Number.NaN }), 'dosers[0].most: '],
    ['twice', dosing({}, {}), 'dosers[1]: pH of sump is held with base twice'],
    [
      'that work against each other',
      dosing({}, { products: ['nitric-acid'], sign: -1, setPoint: 6.7 }),
      'dosers[1].setPoint: a base and an acid so near that they work against each other; got base below 6.8, acid above 6.7',
    ],
    [
      'switched where there is none',
      acting({ kind: 'control', vessel: 'sump', running: false }),
      'actions[0].action.vessel: a vessel without a doser; got "sump"',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change)).toContain(said);
  });
});
