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
import { acidBaseConstants } from '../../../packages/core/src/chemistry/acid-base.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import { openRates } from '../../../packages/core/src/model/rates.js';
import type { Doser } from '../../../packages/core/src/scenario/scenario.js';
import { doneRun } from '../../support/run-of.js';
import {
  float,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';
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
      fish: [tilapia('fish', 'tank', { number: 200 })],
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
    // What is fed grows through each day: the mean of its two ends.
    const fed = seriesOf(run, 'feed@fish').values;
    const ends = fed.slice(2).map((value, day) => (value + fed[day + 1]) / 2);
    expect(plan.feed).toBeCloseTo((fed[1] + ends.reduce((all, value) => all + value, 0)) / 1000, 1);
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

describe('a doser whose probe stands in another vessel', () => {
  /** Fish in a tank, water pumped round through a sump into which is dosed. */
  function loop(probe: string | undefined, other: Partial<Scenario> = {}): Scenario {
    const fish = vessel('tank', 2, { aeration: 200, open: 2, surface: 100, floor: 1 });
    const sump = vessel('sump', 0.5, { exchange: 0.05 });
    const held: Doser = { ...doser, vessel: 'sump', ...(probe === undefined ? {} : { probe }) };
    return scenarioOf([fish, sump], {
      start: [fish, sump].map((each) => startOf(each, { water: stillWater(1, 7), aob: 0.1, nob: 0.05 })),
      fish: [tilapia('fish', 'tank', { number: 200 })],
      flows: [pumped('sump', 'tank', 20), gravity('tank', 'sump')],
      pumps: [mainPump],
      topUp: float(0.5),
      dosers: [held],
      days: 20,
      ...other,
    });
  }
  const least = (run: ReturnType<typeof doneRun>, vessel: string): number =>
    Math.min(...seriesOf(run, `pH@${vessel}`).values.slice(10));

  it('holds the water where the probe stands, not that into which it doses', () => {
    const run = doneRun(loop('tank'));
    expect(least(run, 'tank')).toBeGreaterThan(6.8);
    expect(least(run, 'sump')).toBeGreaterThan(least(run, 'tank'));
    expect(least(doneRun(loop(undefined)), 'tank')).toBeLessThan(least(run, 'tank'));
    expect(basePlan(run).uses.map(({ vessel }) => vessel)).toEqual(['sump']);
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('has partials by the states of the water of the probe, and by time as that moves (against differences)', () => {
    const model = compileModel(loop('tank'), createParameters());
    const instance = model.instances.find(({ doser: index }) => index !== undefined);
    const row = instance?.row ?? -1;
    const { dependence, layout } = model;
    const columns = [...dependence.column.subarray(dependence.start[row], dependence.start[row + 1])];
    expect(columns.map((state) => layout.states[state].place)).toEqual(['tank', 'tank', 'tank']);
    const rates = openRates(model);
    const { regime, system } = rates;
    layout.vessels.forEach((_, at) => {
      regime.volume[at] = [2, 0.5][at];
      regime.slope[at] = [0.3, -0.2][at];
      regime.constants[at] = acidBaseConstants(model.parameters, 20, 0.005);
    });
    regime.coefficients[model.instances.findIndex((each) => each === instance)].set([200, 7, 5]);
    const y = doneRun(loop('tank')).samples[20].y.slice();
    const partials = new Float64Array(dependence.column.length);
    const byTime = new Float64Array(model.rows.length);
    system.differentiate(0, y, partials, byTime);
    const rateAt = (state: number, step: number, time = 0): number => {
      const r = new Float64Array(model.rows.length);
      const moved = y.slice();
      moved[state] += step;
      system.evaluate(time, moved, r);
      return r[row];
    };
    const drift = (rateAt(0, 0, 1e-5) - rateAt(0, 0, -1e-5)) / 2e-5;
    expect(Math.abs(drift)).toBeGreaterThan(0);
    expect(byTime[row] / drift).toBeCloseTo(1, 5);
    columns.forEach((state, i) => {
      const step = 1e-5 * Math.abs(y[state]);
      const slope = (rateAt(state, step) - rateAt(state, -step)) / (2 * step);
      expect(Math.abs(slope)).toBeGreaterThan(0);
      expect(partials[dependence.start[row] + i] / slope).toBeCloseTo(1, 5);
    });
  });

  it('comes out the same by both integrators, and says where it measures when it holds no longer', () => {
    const short = loop('tank', { days: 4 });
    const [a, b] = [integrators.odex, integrators.rosenbrock].map(
      (integrator) => doneRun(short, { integrator, tolerance: 1e-7 }).samples[4].y,
    );
    a.forEach((value, state) => {
      expect(Math.abs(value - b[state])).toBeLessThan(1e-4 * Math.abs(b[state]) + 1e-5);
    });
    const weak: Doser = { ...doser, vessel: 'sump', probe: 'tank', most: 1 };
    const told = doneRun(loop('tank', { dosers: [weak] })).events.filter(({ kind }) => kind === 'control');
    expect(told.map(({ text }) => text)).toEqual([expect.stringMatching(/^pH in tank is/)]);
  });
});

it('a doser that holds alkalinity has a state that lasts, inside its band', () => {
  const held: Doser = { ...doser, hold: 'alkalinity', setPoint: 1.5, band: 0.1 };
  const scenario = tank([held]);
  const still = {
    ...scenario,
    fish: [tilapia('fish', 'tank', { ration: { kind: 'mass', gramsPerDay: 100 } })],
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
