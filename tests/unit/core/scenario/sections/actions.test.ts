import { describe, expect, it } from 'vitest';
import { readScenario } from '../../../../../packages/core/src/scenario/read-scenario.js';
import type { TimedAction, Action } from '../../../../../packages/core/src/scenario/scenario.js';
import { edited, messagesOf } from '../../../../product/faults/small-system.js';

/** The actions of the small system without its dosing, with other actions. */
function timedActionsOf(...lines: readonly string[]): readonly TimedAction[] {
  const list = lines.map((line) => `  - { ${line} }\n`).join('');
  const text = edited(
    ['  - { at: 10 d, for: 6 h, pump-off: main }\n', list],
    ['dosing:\n  - { into: sump, product: potassium-bicarbonate, mass: 50 g, every: 7 d }\n', ''],
    [
      '\nstart:',
      '\nrain-tank: { capacity: 1 m3, volume: 0 L, roof: 1 m2, rain: 0 mm/d, water: mains }\nstart:',
    ],
    [
      'feed: grower-32, ration: 80 g/d }',
      'feed: grower-32, ration: 80 g/d }\n  other: { in: tank, species: common-carp, number: 0, mass: 50 g, feed: grower-32, protein: 30 %, ration: 1 %/d }',
    ],
    ['  mains:', '  soft: { like: soft-mains }\n  mains:'],
  );
  return readScenario(text, { file: 'small.yaml' }).actions;
}

function actionsOf(line: string): Action[] {
  return timedActionsOf(line).map(({ action }) => action);
}

function timesOf(line: string): number[] {
  return timedActionsOf(line).map(({ at }) => at);
}

describe('when', () => {
  it.each([
    ['at: 3 d', [3]],
    ['at: 36 h', [1.5]],
    ['at: 2001-01-11', [10]],
    ['at: "2001-01-11 06:00"', [10.25]],
    ['at: 3 d, every: 10 d', [3, 13, 23]],
    ['at: 0 d, every: 10 d', [0, 10, 20]],
    ['at: 3 d, every: 10 d, until: 23 d', [3, 13]],
    ['at: 3 d, every: 10 d, until: 23.1 d', [3, 13, 23]],
    ['at: 0 d, every: 0.1 d, until: 0.3 d', [0, 0.1, 0.2]],
  ])('%s', (when, expected) => {
    expect(timesOf(`${when}, plant: lettuce`)).toEqual(expected);
  });

  it.each([
    ['at: 3 d, for: 6 h', [3, 3.25]],
    ['from: 3 d, until: 5 d', [3, 5]],
    ['from: 3 d, for: 2 d', [3, 5]],
    ['at: 3 d, for: 1 d, every: 10 d, until: 20 d', [3, 4, 13, 14]],
    ['at: 29 d, for: 5 d', [29]],
  ])('%s is undone at its end', (when, expected) => {
    expect(timesOf(`${when}, pump-off: main`)).toEqual(expected);
  });

  it('intervals that touch do not overlap: their ends are open', () => {
    const actions = timedActionsOf(
      'from: 1 d, until: 2 d, pump-off: main',
      'from: 2 d, until: 3 d, pump-off: main',
    );
    expect(actions.map(({ at, action }) => [at, action.kind === 'pump' && action.running])).toEqual([
      [1, false],
      [2, true],
      [2, false],
      [3, true],
    ]);
  });

  it('refuses more repeats than a run can hold', () => {
    const text = edited(['at: 10 d, for: 6 h, pump-off: main', 'at: 1 d, every: 1 s, plant: lettuce']);
    expect(messagesOf(text)).toEqual([
      'small.yaml:30:23: actions[0].every: too many repeats; got "1 s"; expected at most 100000',
    ]);
  });
});

describe('what', () => {
  it.each<[string, Action]>([
    [
      'stock: { cohort: other, number: 5, mass: 30 g }',
      { kind: 'stock', cohort: 'other', number: 5, mass: 30 },
    ],
    [
      'harvest-fish: { cohort: tilapia, share: 40 % }',
      { kind: 'harvest-fish', cohort: 'tilapia', share: 0.4 },
    ],
    [
      'lose-fish: { cohort: tilapia, number: 3 }',
      { kind: 'lose-fish', cohort: 'tilapia', share: 0, number: 3 },
    ],
    [
      'grade: { cohort: tilapia, to: other, share: 0.5, relative-mass: 1.2 }',
      { kind: 'grade', cohort: 'tilapia', share: 0.5, relativeMass: 1.2, to: 'other' },
    ],
    ['plant: lettuce', { kind: 'plant', planting: 'lettuce' }],
    ['harvest-crop: { planting: lettuce }', { kind: 'harvest-crop', planting: 'lettuce', replant: true }],
    ['leave-empty: lettuce', { kind: 'leave-empty', planting: 'lettuce' }],
    ['feed: { cohort: tilapia, factor: 0.5 }', { kind: 'feed', cohort: 'tilapia', factor: 0.5 }],
    [
      'feed: { cohort: tilapia, ration: 2 %/d, protein: 28 % }',
      {
        kind: 'feed',
        cohort: 'tilapia',
        ration: { kind: 'share', perDay: 0.02 },
        feed: { name: 'grower-32', protein: 0.28 },
      },
    ],
    ['top-up: { cap: 40 L/d }', { kind: 'top-up', dailyCap: 0.04 }],
    ['top-up: { cap: 1 m3/week }', { kind: 'top-up', weeklyCap: 1 }],
    ['cart-water: { volume: 2 m3 }', { kind: 'cart-water', volume: 2, into: 'rain-tank', water: 'mains' }],
    [
      'cart-water: { volume: 2 m3, into: reservoir, water: soft }',
      { kind: 'cart-water', volume: 2, into: 'reservoir', water: 'soft' },
    ],
    ['top-up: stopped', { kind: 'top-up', stopped: true }],
    ['top-up: restored', { kind: 'top-up', stopped: false, dailyCap: Infinity }],
    [
      'change-water: { vessel: tank, share: 30 %, water: soft }',
      { kind: 'change-water', vessel: 'tank', share: 0.3, water: 'soft' },
    ],
    [
      'change-water: { vessel: tank, volume: 100 L, water: soft }',
      { kind: 'change-water', vessel: 'tank', volume: 0.1, water: 'soft' },
    ],
    [
      'dose: { into: sump, product: sodium-chloride, mass: 1 kg }',
      { kind: 'dose', vessel: 'sump', product: 'sodium-chloride', mass: 1000 },
    ],
    ['pump-on: main', { kind: 'pump', pump: 'main', running: true }],
    ['air-off: tank', { kind: 'aeration', vessel: 'tank', running: false }],
    ['clean: { vessel: bed, solids: 90 % }', { kind: 'clean', vessel: 'bed', biofilm: 0, solids: 0.9 }],
    ['medicate: { vessel: tank, kills: 20 % }', { kind: 'medicate', vessel: 'tank', kills: 0.2 }],
    ['medicate: { vessel: tank, stuns: 40 % }', { kind: 'medicate', vessel: 'tank', kills: 0, stuns: 0.4 }],
    [
      'drain-solids: { vessel: tank, share: 1 }',
      { kind: 'drain-solids', vessel: 'tank', share: 1, water: 0 },
    ],
  ])('%s', (written, action) => {
    expect(actionsOf(`at: 1 d, ${written}`)).toEqual([action]);
  });

  it('a power cut stops every pump and all aeration, and starts them again', () => {
    expect(actionsOf('at: 1 d, for: 6 h, power-cut: all')).toEqual([
      { kind: 'pump', pump: 'main', running: false },
      { kind: 'aeration', vessel: 'tank', running: false },
      { kind: 'pump', pump: 'main', running: true },
      { kind: 'aeration', vessel: 'tank', running: true },
    ]);
  });

  it('a change over an interval goes back to what was written', () => {
    expect(actionsOf('from: 1 d, until: 9 d, feed: { cohort: tilapia, ration: 20 g/d }')[1]).toEqual({
      kind: 'feed',
      cohort: 'tilapia',
      ration: { kind: 'mass', gramsPerDay: 80 },
    });
    expect(actionsOf('from: 1 d, until: 9 d, top-up: { cap: 10 L/d }')[1]).toEqual({
      kind: 'top-up',
      dailyCap: Infinity,
      stopped: false,
    });
    const [to, back] = actionsOf('from: 1 d, until: 9 d, source-water: { water: mains, to: soft }');
    expect(to).toMatchObject({ water: 'mains', to: { name: 'soft' } });
    expect(back).toMatchObject({ water: 'mains', to: { name: 'mains' } });
  });

  it('says where it was written', () => {
    expect(timedActionsOf('at: 1 d, plant: lettuce')[0]?.where).toMatch(/^small\.yaml:\d+$/);
  });
});
