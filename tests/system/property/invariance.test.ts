import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterComponents } from '../../../packages/core/src/processes/components.js';
import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Scenario } from '../../../packages/core/src/scenario/scenario.js';
import { networks } from '../../support/random-system.js';
import { doneRun, lastOf, readingsOf } from '../../support/run-of.js';
import { scaled } from '../../support/scaled.js';

const settings = { seed: 20270302, numRuns: 25 };

/**
 * Largest gap between the last readings of two runs in units of what the tolerance allows each of them
 * (relative plus absolute, as concentrations in water). `factor` is how much larger the second system is.
 */
function gap(one: Run, other: Run, factor = 1): number {
  const sample = lastOf(one);
  const readings = readingsOf(other, lastOf(other));
  const absolute = absoluteTolerances(one.model, one.tolerance);
  const gaps = one.model.layout.states.map(({ component, place, vessel }, state) => {
    const inWater = (waterComponents as readonly string[]).includes(component);
    const size = inWater ? sample.volume[vessel] : 1;
    // What a film has got used to and the share of it that is awake are no amounts, and grow with nothing.
    const grows = !inWater && component !== 'acclimation' && component !== 'awake';
    const here = sample.y[state] / size;
    const there = (readings.get(`${component}@${place}`) ?? Number.NaN) / (grows ? factor : 1);
    return Math.abs(here - there) / (one.tolerance * Math.abs(here) + absolute[state] / size);
  });
  return gaps.reduce((worst, next) => (next <= worst ? worst : next), 0);
}

/** Vessels, flows, cohorts, plantings and starts in another order. */
function shuffled(scenario: Scenario): Scenario {
  const turned = <T>(list: readonly T[]): T[] => [...list].reverse();
  return {
    ...scenario,
    vessels: turned(scenario.vessels),
    flows: turned(scenario.flows),
    fish: turned(scenario.fish),
    plantings: turned(scenario.plantings),
    start: turned(scenario.start),
  };
}

/** The same network without anything that holds nitrogen. */
function barren(scenario: Scenario): Scenario {
  return {
    ...scenario,
    waters: scenario.waters.map((water) => ({ ...water, ammonia: 0, nitrite: 0, nitrate: 0 })),
    fish: [],
    plantings: [],
    start: scenario.start.map((start) => ({
      ...start,
      water: { ...start.water, ammonia: 0, nitrite: 0, nitrate: 0, solids: 0 },
      aob: 0,
      nob: 0,
      settled: 0,
    })),
    actions: scenario.actions.filter(({ action }) => action.kind !== 'harvest-fish'),
  };
}

describe('random valid networks', () => {
  it('scaled as a whole keep their concentrations', () => {
    const factors = fc.constantFrom(0.1, 3, 40);
    fc.assert(
      fc.property(networks, factors, (scenario, factor) => {
        expect(gap(doneRun(scenario), doneRun(scaled(scenario, factor)), factor)).toBeLessThan(100);
      }),
      settings,
    );
  });

  it('do not depend on the order in which vessels and flows are written', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        expect(gap(doneRun(scenario), doneRun(shuffled(scenario)))).toBeLessThan(10);
      }),
      settings,
    );
  });

  it('without input or stock make no nitrogen: not a trace', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const run = doneRun(barren(scenario));
        const held = run.samples.flatMap(({ y }) =>
          run.model.layout.states.map((_, s) => Math.abs(y[s] * run.model.contents[s].nitrogen)),
        );
        expect(Math.max(...held)).toBe(0);
      }),
      settings,
    );
  });

  it('without input hold at most the nitrogen they began with', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const waters = scenario.waters.map((water) => ({ ...water, ammonia: 0, nitrite: 0, nitrate: 0 }));
        const unfed = scenario.fish.map((cohort) => ({
          ...cohort,
          ration: { kind: 'mass', gramsPerDay: 0 } as const,
        }));
        const never = scenario.plantings.map((planting) => ({ ...planting, harvest: 300, age: 1 }));
        const run = doneRun({ ...scenario, waters, fish: unfed, plantings: never });
        const held = run.samples.map(({ y }) =>
          run.model.contents.reduce((sum, { nitrogen }, state) => sum + nitrogen * y[state], 0),
        );
        held.slice(1).forEach((now, i) => {
          expect(now).toBeLessThanOrEqual(held[i] * (1 + 1e-12));
        });
      }),
      settings,
    );
  });

  it('give the same bytes when run again', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const [one, two] = [doneRun(scenario), doneRun(scenario)];
        expect(two.samples).toStrictEqual(one.samples);
        expect(two.events).toStrictEqual(one.events);
      }),
      settings,
    );
  });
});
