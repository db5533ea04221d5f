import { seriesOf, steadyState, type Scenario, type SteadyState } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import {
  constant,
  float,
  planting,
  scenarioOf,
  sourceWater,
  startOf,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';

const steady = (scenario: Scenario): SteadyState =>
  steadyState(compileModel(scenario, createParameters(scenario.overrides)));
const valueOf = (state: SteadyState, series: string): number => seriesOf(state.course, series).values[0];

/** One cell of 2 m3 with an exchange of 0.1 m3/d and evaporation of 0.02 m3/d, topped up with mains water. */
function chemostat(
  other: Partial<Scenario> = {},
  cell: Partial<Parameters<typeof vessel>[2]> = {},
): Scenario {
  return scenarioOf([vessel('tank', 2, { exchange: 0.1, ...cell })], {
    et0: constant(0.01),
    topUp: float(2),
    waters: [sourceWater('mains', { chloride: 30, ammonia: 3, nitrite: 0 })],
    ...other,
  });
}

describe('the steady state of a single cell', () => {
  it('is what flows in over what flows out for chloride, with what evaporates on top', () => {
    const state = steady(chemostat({}, { open: 2 }));
    const evaporation = 0.01 * 2 * createParameters().value('water.open-coefficient');
    expect(state).toMatchObject({ kind: 'constant', stable: true });
    expect(valueOf(state, 'chloride@tank')).toBeCloseTo((30 * (0.1 + evaporation)) / 0.1, 9);
  });

  it('has the residence time of the cell for its time constant', () => {
    const state = steady(chemostat());
    const [slowest] = state.modes;
    expect(slowest.time).toBeCloseTo(2 / 0.1, 9);
    expect(slowest.recovery).toBeCloseTo(20 * Math.log(20), 9);
  });

  it('holds TAN at what comes with the water where nothing oxidises it', () => {
    expect(valueOf(steady(chemostat()), 'tan@tank')).toBeCloseTo(3, 9);
  });

  it('is the Monod steady state of a filter without lack of anything else: K b / (mu - b)', () => {
    const overrides = [
      { id: 'aob.k-oxygen', value: 1e-12 },
      { id: 'aob.k-carbon', value: 1e-12 },
      { id: 'aob.ki-ammonia', value: 1e12 },
      { id: 'aob.ki-nitrous', value: 1e12 },
      { id: 'nitrifier.flank-lowest', value: 1e-3 },
      { id: 'nitrifier.flank-distance', value: 100 },
      { id: 'aob.ph-high', value: 24 },
      { id: 'aob.k-salt', value: 1e12 },
      { id: 'biofilm.capacity', value: 1e9 },
      { id: 'biofilm.transfer', value: 1e9 },
    ];
    const cell = vessel('filter', 2, { exchange: 0.5, surface: 10, aeration: 200 });
    const state = steady(
      scenarioOf([cell], {
        topUp: float(2),
        waters: [sourceWater('mains', { ammonia: 5, alkalinity: 4, carbon: 4 })],
        start: [startOf(cell, { aob: 1e-10, nob: 1e-10 })],
        overrides,
      }),
    );
    const parameters = createParameters();
    const [mu, b, k] = ['aob.growth', 'aob.decay', 'aob.k-tan'].map((id) => parameters.value(id));
    expect(state).toMatchObject({ kind: 'constant', stable: true });
    expect(valueOf(state, 'tan@filter')).toBeCloseTo((k * b) / (mu - b), 6);
    expect(valueOf(state, 'aob@filter')).toBeGreaterThan(0);
  });
});

describe('what never settles', () => {
  it('holds chloride of water that is only topped up, and says how it grows', () => {
    const state = steady(chemostat({}, { exchange: 0, open: 2 }));
    const evaporation = 0.01 * 2 * createParameters().value('water.open-coefficient');
    const chloride = state.held.find(({ component }) => component === 'chloride');
    expect(chloride).toMatchObject({ place: 'tank' });
    expect(chloride?.drift).toBeCloseTo(30 * evaporation, 9);
    expect(valueOf(state, 'chloride@tank')).toBe(50);
  });

  it('keeps what is neither brought nor taken at what it was', () => {
    const state = steady(scenarioOf([vessel('tank', 2)]));
    const chloride = state.held.find(({ component }) => component === 'chloride');
    expect(chloride).toMatchObject({ drift: 0 });
    expect(valueOf(state, 'chloride@tank')).toBeCloseTo(50, 9);
  });

  it('holds fish and crops', () => {
    const state = steady(
      chemostat(
        {
          fish: [tilapia('fish', 'tank', { number: 5 })],
          plantings: [planting('lettuce', 'tank', 'lettuce-butterhead', 1, { harvest: 35 })],
        },
        { aeration: 100 },
      ),
    );
    expect(state.held.map(({ component }) => component)).toEqual(expect.arrayContaining(['fish', 'crops']));
    expect(valueOf(state, 'fish-number@fish')).toBe(5);
  });
});
