import type { InputError } from '@leat/core';
import {
  buildScenario,
  checkScenario,
  compileModel,
  createParameters,
  seriesOf,
  simulate,
  startWater,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { stillWater } from '../../../support/scenario-builder.js';

const tank = {
  ...{ name: 'tank', volume: 2, temperature: 26, surface: 60, aeration: 100 },
  ...{ water: { pH: 7.5, alkalinity: 2, nitrate: 5 }, aob: 0.1, nob: 0.1 },
};
const fish = {
  ...{ name: 'fish', vessel: 'tank', species: 'nile-tilapia', number: 30, mass: 100 },
  ...{ ration: 0.015, feed: 'grower-32' },
};

describe('a scenario built in code', () => {
  it('needs no more than a vessel, its water, and days', () => {
    const scenario = buildScenario({ days: 10, vessels: [tank], fish: [fish] });
    expect(() => checkScenario(scenario)).not.toThrow();
    const run = simulate(compileModel(scenario, createParameters()));
    expect(run.outcome.kind).toBe('done');
    expect(seriesOf(run, 'pH@tank').at(0)).toBeCloseTo(7.5, 1);
    expect(seriesOf(run, 'nitrate@tank').at(10)).toBeGreaterThan(5);
    expect(scenario.fish[0].feed).toEqual({ name: 'grower-32', protein: 0.32 });
  });

  it('keeps what is said, and leaves faults to the check, all at once', () => {
    const scenario = buildScenario({
      days: 5,
      startDate: '2026-07-01',
      vessels: [
        { ...tank, temperature: { kind: 'monthly', values: [...Array(12).keys()].map((m) => 10 + m) } },
      ],
      fish: [{ ...fish, feed: 'grwer-32', ration: { kind: 'mass', gramsPerDay: 50 } }],
      plantings: [{ name: 'bed', vessel: 'tnk', crop: 'basil', area: 1, harvest: 30 }],
    });
    expect(scenario.start[0].water.carbon).toBe(
      startWater({ pH: 7.5, alkalinity: 2, nitrate: 5 }, 16).carbon,
    );
    try {
      checkScenario(scenario);
      expect.unreachable();
    } catch (error) {
      const keys = (error as InputError).faults.map(({ key }) => key);
      expect(keys).toEqual(['fish.fish.feed.name', 'plantings.bed.vessel']);
    }
  });
});

describe('startWater', () => {
  it('finds the inorganic carbon of a pH and an alkalinity', () => {
    const { carbon } = stillWater(2, 7.5, { ammonia: 1, calcium: 0.7 });
    const water = startWater({ pH: 7.5, alkalinity: 2, ammonia: 1, chloride: 50, calcium: 0.7 }, 20);
    expect(water.carbon).toBeCloseTo(carbon, 12);
    expect(water.oxygen).toBeCloseTo(9.1, 1);
  });

  it('takes calcium to go with alkalinity, 0.4 mol an equivalent, where none is said', () => {
    expect(startWater({ pH: 7.5, alkalinity: 2 }, 20).calcium).toBeCloseTo(0.8, 12);
  });
});
