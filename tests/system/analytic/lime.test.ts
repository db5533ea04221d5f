import { describe, expect, it } from 'vitest';
import { acidBaseConstants, hydrogenAt } from '../../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import { waterState } from '../../../packages/core/src/model/layout.js';
import { budgetsOf, worstResidual } from '../../../packages/core/src/result/budget.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Doser, StartWater, Vessel } from '../../../packages/core/src/scenario/scenario.js';
import { amountOf, concentration, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from '../../support/scenario-builder.js';

const parameters = createParameters();
const molar = parameters.value('molar.calcium-carbonate');

/** A closed vessel of a m3 with lime, from some water. */
function boxed(water: StartWater, other: Partial<Vessel>, days: number, every = days): Run {
  const box = vessel('box', 1, { temperature: constant(25), ...other });
  return doneRun(scenarioOf([box], { start: [startOf(box, { water })], days, every }), { tolerance: 1e-8 });
}

const index = (run: Run): number => waterChemistry(parameters, lastOf(run), 0).saturationIndex;
const gained = (run: Run, component: 'calcium' | 'carbon' | 'alkalinity'): number =>
  concentration(run, lastOf(run), component, 'box') - concentration(run, run.samples[0], component, 'box');

describe('lime in a closed vessel', () => {
  const acid = stillWater(0.1, 6, { chloride: 0 });

  it('dissolves until the water is saturated, and no further (limit)', () => {
    const run = boxed(acid, { lime: { kind: 'powder', mass: 1000 } }, 60);
    expect(Math.abs(index(run))).toBeLessThan(0.01);
    expect(index(run)).toBeLessThanOrEqual(0);
  });

  it('gives two equivalents and a mol of carbon a mol, and every balance closes (exact)', () => {
    const run = boxed(acid, { lime: { kind: 'shell', mass: 5000 } }, 5);
    const gone = 5000 / molar - amountOf(run, lastOf(run), 'calcite', 'box');
    expect(gone).toBeGreaterThan(0.1);
    expect(gained(run, 'calcium') / gone).toBeCloseTo(1, 9);
    expect(gained(run, 'carbon') / gone).toBeCloseTo(1, 9);
    expect(gained(run, 'alkalinity') / gone).toBeCloseTo(2, 9);
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('dissolves faster the more acid the water, and in proportion to its surface', () => {
    const early = (pH: number, kind: string): number =>
      gained(boxed(stillWater(0.1, pH, { chloride: 0 }), { lime: { kind, mass: 100 } }, 1e-3), 'calcium');
    expect(early(5, 'shell')).toBeGreaterThan(early(6, 'shell'));
    expect(early(6, 'powder') / early(6, 'shell')).toBeCloseTo(0.05 / 0.0008, 0);
  });

  it('all of it dissolves in much acid, and nothing is left below zero', () => {
    const box = vessel('box', 1, { temperature: constant(25), lime: { kind: 'powder', mass: 50 } });
    const dose = { kind: 'dose', vessel: 'box', product: 'hydrochloric-acid', mass: 150 } as const;
    const actions = [{ at: 0, action: dose }];
    const start = [startOf(box, { water: acid })];
    const run = doneRun(scenarioOf([box], { start, actions, days: 40, every: 40 }));
    expect(amountOf(run, lastOf(run), 'calcite', 'box')).toBeGreaterThan(-1e-6);
    expect(gained(run, 'calcium')).toBeCloseTo(50 / molar, 4);
  });
});

describe('scale', () => {
  it('falls on surface until saturation is at its onset, and not below (limit)', () => {
    const water = stillWater(6, 8.6, { calcium: 3 });
    const run = boxed(water, { surface: 500 }, 400);
    const onset = Math.log10(parameters.value('lime.scale-onset'));
    expect(index(run)).toBeGreaterThanOrEqual(onset - 1e-9);
    expect(index(run)).toBeLessThan(onset + 0.02);
    expect(-gained(run, 'calcium') / extentOf(run, lastOf(run), 'lime-scale@box')).toBeCloseTo(1, 6);
  });

  it('does not fall, and lime does not dissolve, in water between saturation and onset', () => {
    const run = boxed(
      stillWater(3, 8, { calcium: 1.5 }),
      { surface: 500, lime: { kind: 'powder', mass: 100 } },
      30,
    );
    expect(index(run)).toBeGreaterThan(0);
    expect(index(run)).toBeLessThan(Math.log10(parameters.value('lime.scale-onset')));
    expect(gained(run, 'calcium')).toBe(0);
  });
});

describe('saturation', () => {
  it('is calcium times carbonate over the solubility product, by the equations of one water (exact)', () => {
    const water = stillWater(2.5, 7.9, { calcium: 1.2 });
    const box = vessel('box', 1, { temperature: constant(25) });
    const run = doneRun(scenarioOf([box], { start: [startOf(box, { water })], days: 1 }));
    const [first] = run.samples;
    const k = acidBaseConstants(parameters, 25, first.ionic[0]);
    const { pH, saturationIndex } = waterChemistry(parameters, first, 0);
    const h = hydrogenAt(pH);
    const carbonate = (first.y[waterState(0, 'carbon')] * k.k1 * k.k2) / (h * h + k.k1 * h + k.k1 * k.k2);
    expect(10 ** saturationIndex / ((1.2 * carbonate) / k.calcite)).toBeCloseTo(1, 9);
  });

  it('is not a number where there is no calcium', () => {
    const box = vessel('box', 1);
    const run = doneRun(scenarioOf([box], { start: [startOf(box)], days: 1 }));
    expect(waterChemistry(parameters, run.samples[0], 0).saturationIndex).toBeNaN();
  });
});

describe('calcium carbonate as a product', () => {
  const box = vessel('box', 1, { temperature: constant(25), open: 1 });
  const dose = { kind: 'dose', vessel: 'box', product: 'calcium-carbonate', mass: 100 } as const;
  const run = doneRun(
    scenarioOf([box], {
      start: [startOf(box, { water: stillWater(0.5, 6.5) })],
      actions: [{ at: 1, action: dose }],
      days: 6,
    }),
  );

  it('goes to the lime of its vessel, and dissolves there over days', () => {
    const there = run.samples.map((sample) => amountOf(run, sample, 'calcite', 'box'));
    expect(there[0]).toBe(0);
    const [posted] = run.postings.filter(({ account }) => account === 'dosing');
    expect([posted.component, posted.amount * molar]).toEqual(['calcite', expect.closeTo(100, 4)]);
    expect(there[2]).toBeGreaterThan(there[3]);
    expect(there[6]).toBeLessThan(0.9 * posted.amount);
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('by a doser, too', () => {
    const doser: Doser = {
      hold: 'pH',
      vessel: 'box',
      setPoint: 7.2,
      products: ['calcium-carbonate'],
      band: 0.1,
      most: 50,
      sign: 1,
    };
    const held = doneRun(
      scenarioOf([box], { start: [startOf(box, { water: stillWater(0.5, 6.5) })], dosers: [doser], days: 6 }),
    );
    expect(extentOf(held, lastOf(held), 'dosing-by-ph@box (calcium-carbonate)')).toBeGreaterThan(1);
    expect(concentration(held, lastOf(held), 'calcium', 'box')).toBeGreaterThan(0.05);
    expect(worstResidual(budgetsOf(held)).share).toBeLessThan(1e-9);
  });
});
