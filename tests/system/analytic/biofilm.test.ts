import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { bell } from '../../../packages/core/src/processes/kernels/rate-terms.js';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import type { Override } from '../../../packages/core/src/library/own-row.js';
import type { StartVessel, StartWater } from '../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { relativeDeviation } from '../../support/deviation.js';
import { amountOf, doneRun } from '../../support/run-of.js';
import { scenarioOf, startOf, stillWater, vessel } from '../../support/scenario-builder.js';

const parameters = createParameters();
const plenty = 1e6;

function filter(
  water: Partial<StartWater>,
  start: Partial<StartVessel>,
  overrides: readonly Override[] = [],
  days = 10,
): Run {
  const sump = vessel('sump', 1, { surface: 10 });
  const still = stillWater(1e5, 7.5, { oxygen: plenty, ...water });
  return doneRun(
    scenarioOf([sump], {
      start: [startOf(sump, { water: still, ...start })],
      // Dead cells would feed heterotrophs, which cover the film.
      overrides: [...overrides, { id: 'heterotroph.growth', value: 1e-12 }],
      days,
    }),
    {
      tolerance: 1e-8,
    },
  );
}

const amounts = (run: Run, component: string): number[] =>
  run.samples.map((sample) => amountOf(run, sample, component, 'sump'));
/** Room of 10 m2, and of each population: its share by yield. */
const room = parameters.value('biofilm.capacity') * 10;
const yields = parameters.value('aob.yield') + parameters.value('nob.yield');
const roomOf = (population: 'aob' | 'nob'): number =>
  (room * parameters.value(`${population}.yield`)) / yields;
/** Lower flank of the bell of the film, pH: it has grown in the water of the start, which keeps its pH. */
const flankOf = (run: Run): number => run.samples[0].y[run.model.layout.acclimation[0]];
/** No inhibition by what is plentiful here, nor by its salt. */
const bearsAll = (population: 'aob' | 'nob', ...by: readonly string[]): Override[] =>
  [...by.map((what) => `ki-${what}`), 'k-salt'].map((id) => ({ id: `${population}.${id}`, value: 1e12 }));

describe('biofilm alone in a vessel', () => {
  it('nitrite oxidisers without nitrite decay first order (exact solution)', () => {
    const run = filter({}, { nob: 0.5 });
    const k = parameters.value('nob.decay');
    const exact = run.samples.map(({ time }) => 0.5 * room * Math.exp(-k * time));
    expect(relativeDeviation(amounts(run, 'nob'), exact)).toBeLessThan(2e-6);
  });

  it('ammonia oxidisers that cannot grow decay first order (exact solution)', () => {
    const run = filter({}, { aob: 0.5 }, [{ id: 'aob.growth', value: 1e-12 }]);
    const k = parameters.value('aob.decay');
    const exact = run.samples.map(({ time }) => 0.5 * room * Math.exp(-k * time));
    expect(relativeDeviation(amounts(run, 'aob'), exact)).toBeLessThan(2e-6);
  });

  it('ammonia oxidisers with all they need fill a surface as a logistic (exact solution)', () => {
    // Ammonia, oxygen and inorganic carbon so plentiful that activity per cell is constant: X' = (mu (1 - X/R) - b) X.
    const run = filter({ ammonia: 3e5 }, { aob: 1e-4 }, bearsAll('aob', 'ammonia', 'nitrous'), 60);
    const { pH } = waterChemistry(run.model.parameters, run.samples[0], 0);
    const [carbon] = amounts(run, 'carbon');
    const value = (id: string): number => parameters.value(id);
    const mu =
      value('aob.growth') *
      (3e5 / (3e5 + value('aob.k-tan'))) *
      (carbon / (carbon + value('aob.k-carbon'))) *
      bell(pH, flankOf(run), value('aob.ph-high'));
    const net = mu - value('aob.decay');
    const full = roomOf('aob') * (1 - value('aob.decay') / mu);
    const start = 1e-4 * room;
    const exact = run.samples.map(({ time }) => full / (1 + (full / start - 1) * Math.exp(-net * time)));
    expect(relativeDeviation(amounts(run, 'aob'), exact)).toBeLessThan(1e-4);
  });

  it('nitrite oxidisers stop growing and keep oxidising where the surface is full (limit)', () => {
    const long = filter({ nitrite: 1e5, ammonia: 10 }, { nob: 0.25 }, bearsAll('nob', 'nitrous'), 200);
    // As the water is at the end: decay has added some ammonia, which inhibits a little.
    const { pH, ammonia } = waterChemistry(long.model.parameters, long.samples[200], 0);
    const value = (id: string): number => parameters.value(id);
    const activity =
      value('nob.growth') *
      (value('nob.ki-ammonia') / (value('nob.ki-ammonia') + ammonia)) *
      bell(pH, flankOf(long), value('nob.ph-high'));
    const steady = roomOf('nob') * (1 - value('nob.decay') / activity);
    expect(amounts(long, 'nob').at(-1)).toBeCloseTo(steady, 2);
    const nitrate = long.samples.slice(-2).map((sample) => amountOf(long, sample, 'nitrate', 'sump'));
    // All activity oxidises, with or without growth: activity x X / Y.
    expect((nitrate[1] - nitrate[0]) / ((activity * steady) / value('nob.yield'))).toBeCloseTo(1, 2);
  });
});
