import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { budgetOf } from '../../../../packages/core/src/result/budget.js';
import type { Planting } from '../../../../packages/core/src/scenario/scenario.js';
import { pickedFruit } from '../../../support/grown-fruit.js';
import { amountOf, doneRun, lastOf } from '../../../support/run-of.js';
import {
  constant,
  planting,
  scenarioOf,
  startOf,
  stillWater,
  vessel,
} from '../../../support/scenario-builder.js';

const parameters = createParameters();
const crop = (name: string, property: string): number => parameters.value(`crop.${name}.${property}`);

function grown(name: string, days: number, other: Partial<Planting> = {}) {
  const sump = vessel('sump', 50, { temperature: constant(22) });
  return doneRun(
    scenarioOf([sump], {
      start: [startOf(sump, { water: stillWater(50, 7, { nitrate: 400 }) })],
      plantings: [planting('bed', 'sump', name, 4, other)],
      light: constant(20),
      // So much nitrate is no salt here.
      overrides: [{ id: 'crop.salt-dilution', value: 1e9 }],
      days,
    }),
    { tolerance: 1e-8 },
  );
}

describe('fruit', () => {
  it('is picked from the age at which the first is ripe, a share of what hangs there', () => {
    const onset = crop('tomato', 'fruit-onset') + crop('tomato', 'fruit-days');
    expect(pickedFruit('tomato', onset + 10, 20).first).toBe(onset);
    const run = grown('tomato', onset + 1, { picks: 4 });
    const before = amountOf(run, run.samples[onset], 'fruit-mass', 'bed');
    const picks = run.postings.filter(({ component }) => component === 'fruit-mass');
    // The sample of a day is taken before what is done on it; a pick takes 1 - e^(-4/50) = 7.69 %.
    expect(picks.map(({ amount }) => -amount / before)).toEqual([expect.closeTo(0.0769, 4)]);
  });

  it('leaves every balance closed', () => {
    const run = grown('cucumber', 80, { picks: 3 });
    for (const quantity of ['nitrogen', 'oxygen-demand', 'carbon', 'charge'] as const) {
      const { residual, lines } = budgetOf(run, quantity, 'system');
      const size = Math.max(...lines.map(({ amount }) => Math.abs(amount)), 1e-9);
      expect(Math.abs(residual) / size, quantity).toBeLessThan(1e-9);
    }
  });

  it('at the start is that of plants which have grown and been picked till then', () => {
    const age = 121;
    const before = grown('tomato', age, { picks: 4 });
    const later = grown('tomato', 1, { picks: 4, age });
    for (const component of ['crop-mass', 'fruit-mass'] as const) {
      const grownTo = amountOf(before, lastOf(before), component, 'bed');
      // Nitrogen keeps the plant within 0.1 % of free growth.
      expect(amountOf(later, later.samples[0], component, 'bed') / grownTo).toBeCloseTo(1, 2);
    }
  });

  it('goes with the plants when the bed is cleared', () => {
    const run = grown('bean', 70, { picks: 4, harvest: 65, after: 'empty' });
    expect(amountOf(run, lastOf(run), 'fruit-mass', 'bed')).toBe(0);
    expect(amountOf(run, lastOf(run), 'crop-mass', 'bed')).toBe(0);
  });
});

describe('leaves that are cut', () => {
  it('leave the share that is said, and grow again', () => {
    const run = grown('mint', 61, { cut: { every: 30, leave: 0.3 } });
    const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'bed'));
    const cuts = run.events.filter(({ kind }) => kind === 'cut').map(({ time }) => time);
    expect(cuts).toEqual([30, 60]);
    // The sample of a day is taken before what is done on it.
    const [grew, left, again] = [masses[30], masses[31], masses[60]];
    expect(left / grew).toBeGreaterThan(0.3);
    expect(left / grew).toBeLessThan(0.45);
    expect(again).toBeGreaterThan(2 * left);
  });
});
