import { createParameters } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { meanStand } from '../../../../../packages/core/src/analysis/steady/cycle.js';
import { evenTerms, spreadActions } from '../../../../../packages/core/src/analysis/steady/spread-actions.js';
import { compileModel } from '../../../../../packages/core/src/model/compile.js';
import { openCropClock } from '../../../../../packages/core/src/run/crop-clock.js';
import { conditionsAt } from '../../../../../packages/core/src/run/forcing.js';
import { constant, planting, scenarioOf, vessel } from '../../../../support/scenario-builder.js';

describe('actions spread evenly', () => {
  it('drain so much that the mean of a steady rain of solids is that of the sawtooth', () => {
    // 10 g a day fall, 80 % of what lies there is drained every 5 days: the sawtooth has a closed mean.
    const [inflow, share, every] = [10, 0.8, 5];
    const drain = { kind: 'drain-solids', vessel: 'tank', share, water: 0 } as const;
    const actions = [5, 10, 15].map((at) => ({ at, action: drain }));
    const scenario = scenarioOf([vessel('tank', 1, { floor: 1 })], { days: 20, actions });
    const { spread } = spreadActions(scenario);
    const [term] = evenTerms(spread, compileModel(scenario, createParameters()));
    const before = (inflow * every) / share;
    const mean = before - (inflow * every) / 2;
    expect(inflow / term.loss).toBeCloseTo(mean, 12);
  });

  it('change water as a flow of it would', () => {
    const change = { kind: 'change-water', vessel: 'tank', share: 0.1, water: 'mains' } as const;
    const actions = [0, 2, 4, 6, 8].map((at) => ({ at, action: change }));
    const scenario = scenarioOf([vessel('tank', 2)], { days: 10, actions });
    const model = compileModel(scenario, createParameters());
    const terms = evenTerms(spreadActions(scenario).spread, model);
    const [chloride] = terms.slice(-2);
    expect(terms).toHaveLength(12);
    expect(chloride.loss).toBeCloseTo(0.05, 12);
    expect(chloride.gain).toBeCloseTo((50 * 0.2) / 2, 12);
  });
});

describe('the mean stand of a crop', () => {
  it('takes up what the crop takes up in the mean from planting to harvest', () => {
    const bed = planting('lettuce', 'bed', 'lettuce-butterhead', 4, { harvest: 35 });
    const scenario = scenarioOf([vessel('bed', 1, { temperature: constant(22) })], { plantings: [bed] });
    const model = compileModel(scenario, createParameters());
    const clock = openCropClock(model);
    const day = {
      temperature: Float64Array.of(22),
      air: Float64Array.of(22),
      light: Float64Array.of(20),
      ionic: Float64Array.of(0.01),
      bearing: Float64Array.of(0),
    };
    const conditions = conditionsAt(model, 0, day, 0, 0, 0);
    const stand = meanStand(model, clock, 0, conditions);
    const at = (age: number) => clock.stand(0, age, conditions);
    const mean = (at(35).nitrogen - at(0).nitrogen) / 35;
    let age = 0;
    while (at(age).mass < stand.mass) age += 0.001;
    const uptake = (at(age + 0.01).nitrogen - at(age - 0.01).nitrogen) / 0.02;
    expect(uptake / mean).toBeCloseTo(1, 2);
  });
});
