import { describe, expect, it } from 'vitest';
import {
  type ActionOf,
  actionOrder,
  isSetting,
} from '../../../../packages/core/src/scenario/action-kinds.js';
import type { TimedAction, Action, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { amountOf, doneRun, lastOf } from '../../../support/run-of.js';
import {
  float,
  gravity,
  mainPump,
  planting,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../../support/scenario-builder.js';

const sump = vessel('sump', 2, { floor: 1, surface: 10 });

/** Pipes for what is switched: a pump into a tank and back, air, a doser at rest, and a float that a full sump holds shut. */
const pipes: Partial<Scenario> = {
  topUp: float(2),
  pumps: [mainPump],
  flows: [pumped('sump', 'tank', 5), gravity('tank', 'sump')],
  dosers: [
    {
      hold: 'pH',
      vessel: 'sump',
      setPoint: 2,
      products: ['potassium-hydroxide'],
      band: 0.1,
      most: 1,
      sign: 1,
    },
  ],
};
const tank = vessel('tank', 1);

/** State just after the actions of day 0. */
function after(
  actions: readonly Action[],
  piped = false,
): {
  run: Run;
  amount: (component: string, place?: string) => number;
} {
  const run = doneRun(
    scenarioOf(piped ? [tank, { ...sump, aeration: 10 }] : [sump], {
      ...(piped ? pipes : {}),
      waters: [sourceWater('mains', { chloride: 10 })],
      fish: [
        tilapia('fish', 'sump', { ration: { kind: 'share', perDay: 0 } }),
        tilapia('small', 'sump', { number: 0 }),
      ],
      plantings: [planting('lettuce', 'sump', 'lettuce-butterhead', 3)],
      start: [
        ...(piped ? [startOf(tank)] : []),
        startOf(sump, {
          water: stillWater(2, 7.5, { oxygen: 0, chloride: 50 }),
          settled: 80,
          aob: 0.2,
          nob: 0.1,
        }),
      ],
      actions: actions.map((action): TimedAction => ({ at: 0, action })),
      days: 1,
    }),
  );
  return { run, amount: (component, place = 'sump') => amountOf(run, run.samples[0], component, place) };
}

const kill: Action = { kind: 'lose-fish', cohort: 'fish', share: 1 };
const stock: Action = { kind: 'stock', cohort: 'fish', number: 7, mass: 20 };
const renew: Action = { kind: 'change-water', vessel: 'sump', share: 1, water: 'mains' };
const dose: Action = { kind: 'dose', vessel: 'sump', product: 'sodium-chloride', mass: 30 };
const pick: Action = { kind: 'harvest-crop', planting: 'lettuce', replant: false };
const plant: Action = { kind: 'plant', planting: 'lettuce' };

describe('actions of one instant', () => {
  it('have one place each in the order: what leaves, water, what comes, settings', () => {
    expect(new Set(actionOrder).size).toBe(actionOrder.length);
    const place = (kind: Action['kind']): number => actionOrder.indexOf(kind);
    expect(place('lose-fish')).toBeLessThan(place('change-water'));
    expect(place('change-water')).toBeLessThan(place('dose'));
    expect(place('dose')).toBeLessThan(place('stock'));
    expect(place('plant')).toBeLessThan(place('pump'));
  });

  it.each([[[kill, stock]], [[stock, kill]]])(
    'take fish out before new fish come, however they are written',
    (actions) => {
      const { amount } = after(actions);
      expect(amount('fish-number', 'fish')).toBe(7);
      expect(amount('fish-mass', 'fish')).toBe(140);
    },
  );

  it.each([[[renew, dose]], [[dose, renew]]])(
    'change water before a dose is given, however they are written',
    (actions) => {
      const salt = after([]).run.model.parameters.value('dose.sodium-chloride.chloride');
      expect(after(actions).amount('chloride')).toBeCloseTo(10 * 2 + 30 * salt, 10);
    },
  );

  it.each([[[pick, plant]], [[plant, pick]]])(
    'harvest a crop before planting, however they are written',
    (actions) => {
      const { run, amount } = after(actions);
      expect(amount('crop-mass', 'lettuce')).toBeCloseTo(
        3 * run.model.parameters.value('crop.lettuce-butterhead.seedling-mass'),
        10,
      );
    },
  );

  it('of one kind keep the order of the file', () => {
    const half: Action = { kind: 'harvest-fish', cohort: 'fish', share: 0.5 };
    const thirty: Action = { kind: 'harvest-fish', cohort: 'fish', share: 0, number: 30 };
    expect(after([half, thirty]).amount('fish-number', 'fish')).toBeCloseTo(20, 10);
    expect(after([thirty, half]).amount('fish-number', 'fish')).toBeCloseTo(35, 10);
  });
});

/** One of each kind: a kind that is not here is no program. */
const oneOfEach: { readonly [Kind in Action['kind']]: ActionOf<Kind> } = {
  'lose-fish': { kind: 'lose-fish', cohort: 'fish', share: 0.1 },
  'harvest-fish': { kind: 'harvest-fish', cohort: 'fish', share: 0.1 },
  grade: { kind: 'grade', cohort: 'fish', share: 0.1, relativeMass: 1, to: 'small' },
  'harvest-crop': { kind: 'harvest-crop', planting: 'lettuce', replant: false },
  'leave-empty': { kind: 'leave-empty', planting: 'lettuce' },
  'drain-solids': { kind: 'drain-solids', vessel: 'sump', share: 0.5, water: 0.01 },
  clean: { kind: 'clean', vessel: 'sump', biofilm: 0.1, solids: 0.1 },
  medicate: { kind: 'medicate', vessel: 'sump', kills: 0.1 },
  'change-water': { kind: 'change-water', vessel: 'sump', share: 0.1, water: 'mains' },
  'cart-water': { kind: 'cart-water', volume: 0.01, into: 'reservoir', water: 'mains' },
  dose,
  stock,
  plant,
  'source-water': { kind: 'source-water', water: 'mains', to: sourceWater('mains', { chloride: 5 }) },
  'top-up': { kind: 'top-up', stopped: true },
  feed: { kind: 'feed', cohort: 'fish', factor: 2 },
  aeration: { kind: 'aeration', vessel: 'sump', running: false },
  control: { kind: 'control', vessel: 'sump', running: false },
  pump: { kind: 'pump', pump: 'main', running: false },
};

describe('an action of each kind', () => {
  const each = Object.values(oneOfEach);

  it('is done and logged once, in the order of the table, however they are written', () => {
    const { run } = after([...each].reverse(), true);
    expect(run.events.filter(({ time }) => time === 0).map(({ kind }) => kind)).toEqual(actionOrder);
  });

  it('either leaves a setting, and moves nothing, or is done at its moment', () => {
    const moves = (action: Action): number => after([action], true).run.postings.length;
    const still = each.filter((action) => moves(action) === 0).map(({ kind }) => kind);
    // A full sump takes no water, and a planted bed no plants.
    const nothingToDo = ['cart-water', 'plant'];
    const settings = each.filter(isSetting).map(({ kind }) => kind);
    expect(still.sort()).toEqual([...nothingToDo, ...settings].sort());
  });
});

describe('an action that asks for more than there is', () => {
  const told = (action: Action, ...before: readonly Action[]): readonly [string, boolean] => {
    const [event] = after([...before, action]).run.events.filter(({ kind }) => kind === action.kind);
    return [event.text, event.short === true];
  };
  const fish = (number: number): Action => ({ kind: 'harvest-fish', cohort: 'fish', share: 0, number });

  it('says what was done, and what was asked for', () => {
    expect(told(fish(3000))).toEqual(['100 fish, 10000 g; 3000 fish were asked for', true]);
    expect(told({ ...kill, number: 3000, share: 0 })[1]).toBe(true);
    const drained: Action = { kind: 'drain-solids', vessel: 'sump', share: 0, water: 0.5 };
    expect(told({ kind: 'change-water', vessel: 'sump', volume: 2, water: 'mains' }, drained)).toEqual([
      '1500 L for mains; 2000 L of water were asked for',
      true,
    ]);
    expect(told({ kind: 'drain-solids', vessel: 'sump', share: 0.5, water: 3 })).toEqual([
      '40 g dry, with 1000 L of water; 3000 L of water were asked for',
      true,
    ]);
    expect(told(plant)).toEqual(['0 of 1 batches planted; the others stand already', true]);
  });

  it('is told apart from one that gets all: of fish, to the half fish', () => {
    for (const number of [30, 100]) expect(told(fish(number))[1]).toBe(false);
    expect(told(fish(100), { ...kill, share: 0.004 })[1]).toBe(false);
    expect(told(fish(100), { ...kill, share: 0.005 })[1]).toBe(true);
    expect(told(renew)[1]).toBe(false);
    expect(told({ kind: 'change-water', vessel: 'sump', volume: 2, water: 'mains' })[1]).toBe(false);
    expect(told({ kind: 'drain-solids', vessel: 'sump', share: 0.5, water: 1 })[1]).toBe(false);
  });
});

describe('an action', () => {
  it('books what it moves: states change by the postings and by nothing else', () => {
    const { run } = after([
      kill,
      stock,
      renew,
      dose,
      { kind: 'clean', vessel: 'sump', biofilm: 0.3, solids: 0.5 },
      { kind: 'medicate', vessel: 'sump', kills: 0.2 },
      { kind: 'drain-solids', vessel: 'sump', share: 0.5, water: 0.1 },
    ]);
    const untouched = after([]).run;
    run.samples[0].y.forEach((value, state) => {
      const moved = run.postings.filter((posting) => posting.state === state);
      const sum = moved.reduce((total, { amount }) => total + amount, 0);
      expect(value).toBeCloseTo(untouched.samples[0].y[state] + sum, 9);
    });
    expect(run.samples[0].volume[0]).toBeCloseTo(2 - 0.1, 12);
  });

  it('kills and cleans by shares', () => {
    const plain = after([]);
    const treated = after([
      { kind: 'medicate', vessel: 'sump', kills: 0.2 },
      { kind: 'clean', vessel: 'sump', biofilm: 0.5, solids: 0.25 },
    ]);
    expect(treated.amount('aob')).toBeCloseTo(plain.amount('aob') * 0.4, 12);
    expect(treated.amount('nob')).toBeCloseTo(plain.amount('nob') * 0.4, 12);
    expect(treated.amount('settled')).toBeCloseTo(60, 12);
  });

  it('stuns a share of what lives on, and kills none of it', () => {
    const { amount } = after([
      { kind: 'medicate', vessel: 'sump', kills: 0, stuns: 0.6 },
      { kind: 'clean', vessel: 'sump', biofilm: 0, solids: 0, stuns: 0.5 },
    ]);
    expect(amount('awake')).toBeCloseTo(0.4 * 0.5, 12);
    expect(amount('aob')).toBe(after([]).amount('aob'));
  });

  it('grades fish into another cohort, losing none', () => {
    const { amount } = after([
      { kind: 'grade', cohort: 'fish', share: 0.25, relativeMass: 1.4, to: 'small' },
    ]);
    expect(amount('fish-number', 'fish')).toBe(75);
    expect(amount('fish-number', 'small')).toBe(25);
    expect(amount('fish-mass', 'small')).toBeCloseTo(0.25 * 1.4 * 10_000, 9);
    expect(amount('fish-mass', 'small') + amount('fish-mass', 'fish')).toBeCloseTo(10_000, 9);
  });

  it('in the middle of a day acts at its instant', () => {
    const { run } = after([]);
    const late = doneRun({ ...run.model.scenario, every: 0.25, actions: [{ at: 0.4, action: renew }] });
    const course = late.samples.map((sample) => amountOf(late, sample, 'chloride', 'sump'));
    expect(course.map((amount) => Math.round(amount))).toEqual([100, 100, 20, 20, 20]);
    expect(late.events.find(({ kind }) => kind === 'change-water')?.time).toBe(0.4);
    expect(lastOf(late).posted).toBe(late.postings.length);
  });
});
