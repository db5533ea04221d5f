import {
  basePlan,
  budgetsOf,
  endStateOf,
  seriesOf,
  steadyState,
  worstResidual,
  type Scenario,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import type { Doser } from '../../../packages/core/src/scenario/scenario.js';
import { doneRun } from '../../support/run-of.js';
import { float, scenarioOf, startOf, stillWater, tilapia, vessel } from '../../support/scenario-builder.js';
import { integrators } from '../../support/integrators.js';

const doser: Doser = {
  ...{ hold: 'pH', vessel: 'tank', setPoint: 7, products: ['potassium-hydroxide'], band: 0.2 },
  ...{ most: 200, sign: 1 },
};

/** Fish in one aired cell with a mature film, whose acid a doser takes up. */
function tank(dosers: readonly Doser[], other: Partial<Scenario> = {}): Scenario {
  const cell = vessel('tank', 2, { aeration: 200, open: 2, surface: 100, exchange: 0.02, floor: 1 });
  const start = startOf(cell, { water: stillWater(1, 7), aob: 0.3, nob: 0.1 });
  return scenarioOf([cell], {
    ...{
      start: [start],
      cohorts: [tilapia('fish', 'tank', { number: 200 })],
      topUp: float(2),
      dosers,
      days: 30,
    },
    ...other,
  });
}

const strength = createParameters().value('dose.potassium-hydroxide.alkalinity');

describe('a doser that holds pH', () => {
  const run = doneRun(tank([doser]));
  const pH = seriesOf(run, 'pH@tank').values;

  it('keeps the water within its band, where it falls without', () => {
    const late = pH.slice(10);
    expect(Math.min(...late)).toBeGreaterThan(6.8);
    expect(Math.max(...late)).toBeLessThan(7);
    const without = doneRun(tank([]));
    expect(Math.min(...seriesOf(without, 'pH@tank').values)).toBeLessThan(6.5);
  });

  it('closes every balance', () => {
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('books what it gave: grams times strength are the base of the account, and the mean of the series', () => {
    const plan = basePlan(run);
    expect(plan.uses).toHaveLength(1);
    const [use] = plan.uses;
    expect(use).toMatchObject({ product: 'potassium-hydroxide', vessel: 'tank' });
    expect(use.equivalents).toBeCloseTo(use.mass * strength, 12);
    const charge = budgetsOf(run).find(({ quantity, place }) => quantity === 'charge' && place === 'system');
    const line = charge?.lines.find(
      ({ by, component }) => by === 'dosing-by-ph' && component === 'alkalinity',
    );
    expect((line?.amount ?? 0) / use.equivalents).toBeCloseTo(1, 10);
    const { values } = seriesOf(run, 'dosed@tank');
    expect(values.reduce((all, value) => all + value, 0) / plan.base).toBeCloseTo(1, 10);
    expect(plan.feed).toBeCloseTo(
      seriesOf(run, 'feed@fish')
        .values.slice(1)
        .reduce((all, value) => all + value, 0) / 1000,
      1,
    );
  });

  it('comes out the same by both integrators', () => {
    const other = doneRun(tank([doser], { days: 5 }), { integrator: integrators.odex, tolerance: 1e-7 });
    const same = doneRun(tank([doser], { days: 5 }), { tolerance: 1e-7 });
    const [a, b] = [other, same].map((each) => each.samples[5].y);
    a.forEach((value, state) => {
      expect(Math.abs(value - b[state])).toBeLessThan(1e-4 * Math.abs(b[state]) + 1e-5);
    });
  });

  it('feeds two products in equal masses, and half of each', () => {
    const both = doneRun(tank([{ ...doser, products: ['potassium-hydroxide', 'calcium-hydroxide'] }]));
    const [first, second] = basePlan(both).uses;
    expect(first.mass / second.mass).toBeCloseTo(1, 10);
    expect(Math.abs(basePlan(both).base / basePlan(run).base - 1)).toBeLessThan(0.05);
  });

  it('goes on from a saved state as the unbroken run does', () => {
    const half = doneRun(tank([doser], { days: 15 }));
    const rest = doneRun(tank([doser], { saved: endStateOf(half) }));
    const [end, whole] = [rest, run].map(({ samples }) => samples[samples.length - 1]);
    expect([end.time, whole.time]).toEqual([30, 30]);
    expect([...end.y]).toEqual([...whole.y]);
  });

  it('stops while it is switched off, as in a power cut', () => {
    const off = { kind: 'control', vessel: 'tank' } as const;
    const actions = [
      { at: 10, action: { ...off, running: false } },
      { at: 15, action: { ...off, running: true } },
    ];
    const { values } = seriesOf(doneRun(tank([doser], { actions })), 'dosed@tank');
    expect([...values.slice(11, 16)]).toEqual([0, 0, 0, 0, 0]);
    expect(values[10]).toBeGreaterThan(0);
    expect(values[16]).toBeGreaterThan(values[10]);
  });

  it('says once that it holds no longer, when it gives its most', () => {
    const weak = doneRun(tank([{ ...doser, most: 1 }]));
    const told = weak.events.filter(({ kind }) => kind === 'control');
    expect(told).toHaveLength(1);
    expect(told[0].text).toContain('holds no longer, at its most (1 g/d)');
    expect(run.events.filter(({ kind }) => kind === 'control')).toEqual([]);
  });
});

it('a doser that holds alkalinity has a state that lasts, inside its band', () => {
  const held: Doser = { ...doser, hold: 'alkalinity', setPoint: 1.5, band: 0.1 };
  const scenario = tank([held]);
  const still = {
    ...scenario,
    cohorts: [tilapia('fish', 'tank', { ration: { kind: 'mass', gramsPerDay: 100 } })],
  };
  const state = steadyState(compileModel(still, createParameters()));
  const [value] = seriesOf(state.course, 'alkalinity@tank').values;
  expect(value).toBeGreaterThan(1.4);
  expect(value).toBeLessThan(1.5);
});

it('an acid is fed above what it holds, and nitric acid brings its nitrate', () => {
  const acid: Doser = { ...doser, products: ['nitric-acid'], setPoint: 6.5, sign: -1 };
  const cell = vessel('tank', 1, { aeration: 100 });
  const run = doneRun(
    scenarioOf([cell], { start: [startOf(cell, { water: stillWater(2, 7.5) })], dosers: [acid], days: 20 }),
  );
  const pH = seriesOf(run, 'pH@tank').values;
  expect(pH[0]).toBeCloseTo(7.5, 6);
  expect(pH[20]).toBeGreaterThan(6.5);
  expect(pH[20]).toBeLessThan(6.7);
  const plan = basePlan(run);
  expect(plan.base).toBe(0);
  const nitrate = seriesOf(run, 'nitrate@tank').values[20];
  // One mol of nitrogen a mol of acid: 14.007 g an eq, in 1 m3.
  expect(nitrate / plan.acid).toBeCloseTo(14.007, 2);
});
