import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { relativeDeviation } from '../../support/deviation.js';
import { amountOf, concentration, courseOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import {
  constant,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';

const parameters = createParameters();
/** So much oxygen that its limitation is 1 to a few parts in a million, and no use of it shows. */
const plenty = 1e6;
const theta = parameters.value('solids.theta');

describe('solids alone in a vessel', () => {
  it('settle at velocity x floor / volume (exact solution)', () => {
    const sump = vessel('sump', 2, { floor: 0.1 });
    const start = [startOf(sump, { water: stillWater(2, 7.5, { solids: 40, oxygen: 0 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 5 }), { tolerance: 1e-8 });
    const k = (parameters.value('solids.settling-velocity') * 0.1) / 2;
    const left = run.samples.map(({ time }) => 40 * Math.exp(-k * time));
    const fallen = run.samples.slice(1).map((sample) => amountOf(run, sample, 'settled', 'sump'));
    expect(relativeDeviation(courseOf(run, 'solids', 'sump'), left)).toBeLessThan(1e-7);
    expect(
      relativeDeviation(
        fallen,
        left.slice(1).map((c) => 2 * (40 - c)),
      ),
    ).toBeLessThan(1e-7);
  });

  it('are caught with the stated efficiency from a steady flow (exact steady state)', () => {
    // Without oxygen fish eat nothing: all feed becomes solids, at a constant rate.
    const settler = vessel('settler', 0.3, { capture: 0.6 });
    const sump = vessel('sump', 1);
    const run = doneRun(
      scenarioOf([settler, sump], {
        pumps: [mainPump],
        flows: [pumped('sump', 'settler', 10), gravity('settler', 'sump')],
        cohorts: [tilapia('fish', 'sump', { ration: { kind: 'mass', gramsPerDay: 50 } })],
        start: [settler, sump].map((each) => startOf(each, { water: stillWater(2, 7.5, { oxygen: 0 }) })),
        days: 40,
        every: 20,
      }),
    );
    const [into, out] = ['sump', 'settler'].map((name) => concentration(run, lastOf(run), 'solids', name));
    expect(out / into).toBeCloseTo(1 - 0.6, 6);
    const solids = (50 * parameters.value('feed.grower-32.demand')) / parameters.value('solids.demand');
    expect((10 * (into - out)) / solids).toBeCloseTo(1, 6);
  });

  it('are mineralised first order where oxygen abounds; their nitrogen appears as TAN (exact solution)', () => {
    const sump = vessel('sump', 1, { temperature: constant(25) });
    const start = [startOf(sump, { water: stillWater(2, 7.5, { solids: 10, oxygen: plenty }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 8 }), { tolerance: 1e-8 });
    const k = parameters.value('solids.mineralisation-suspended') * theta ** 5;
    const left = run.samples.map(({ time }) => 10 * Math.exp(-k * time));
    expect(relativeDeviation(courseOf(run, 'solids', 'sump'), left)).toBeLessThan(2e-6);
    const tan = left.slice(1).map((c) => (10 - c) * parameters.value('solids.nitrogen'));
    expect(relativeDeviation(courseOf(run, 'tan', 'sump').slice(1), tan)).toBeLessThan(2e-6);
  });

  it('settled, are mineralised first order by the share that oxygen reaches (exact solution)', () => {
    const sump = vessel('sump', 1, { floor: 1 });
    const start = [startOf(sump, { settled: 300, water: stillWater(2, 7.5, { oxygen: plenty }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20 }), { tolerance: 1e-8 });
    const k = parameters.value('solids.mineralisation-settled') * parameters.value('solids.exposed');
    const got = run.samples.map((sample) => amountOf(run, sample, 'settled', 'sump'));
    expect(
      relativeDeviation(
        got,
        run.samples.map(({ time }) => 300 * Math.exp(-k * time)),
      ),
    ).toBeLessThan(2e-6);
  });

  it('settled, denitrify first order where nitrate abounds and oxygen is absent (exact solution)', () => {
    const sump = vessel('sump', 1, { floor: 1, temperature: constant(15) });
    const start = [startOf(sump, { settled: 300, water: stillWater(2, 7.5, { oxygen: 0, nitrate: 1e6 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20 }), { tolerance: 1e-8 });
    const k =
      parameters.value('solids.mineralisation-settled') *
      theta ** -5 *
      parameters.value('denitrification.activity');
    const got = run.samples.map((sample) => amountOf(run, sample, 'settled', 'sump'));
    const exact = run.samples.map(({ time }) => 300 * Math.exp(-k * time));
    expect(relativeDeviation(got, exact)).toBeLessThan(2e-6);
    const used = extentOf(run, lastOf(run), 'denitrification@sump');
    expect(used).toBeCloseTo(300 - amountOf(run, lastOf(run), 'settled', 'sump'), 8);
  });

  it('without oxygen or nitrate lie as they are', () => {
    const sump = vessel('sump', 1, { floor: 1 });
    const start = [startOf(sump, { settled: 300, water: stillWater(2, 7.5, { oxygen: 0 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20 }));
    expect(amountOf(run, lastOf(run), 'settled', 'sump')).toBe(300);
  });
});
