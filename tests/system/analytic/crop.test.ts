import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import type { StartWater } from '../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { relativeDeviation } from '../../support/deviation.js';
import { amountOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import {
  constant,
  planting,
  scenarioOf,
  startOf,
  stillWater,
  vessel,
} from '../../support/scenario-builder.js';

const parameters = createParameters();
const crop = (property: string): number => parameters.value(`crop.lettuce-butterhead.${property}`);
const area = 5;

function bed(water: Partial<StartWater>, temperature: number): Run {
  const sump = vessel('sump', 10, { temperature: constant(temperature) });
  const start = [startOf(sump, { water: stillWater(1000, 7.5, water) })];
  const plantings = [planting('lettuce', 'sump', 'lettuce-butterhead', area)];
  return doneRun(scenarioOf([sump], { start, plantings, days: 40 }), { tolerance: 1e-8 });
}

function logistic(time: number, warmth: number): number {
  const final = crop('final-mass') * area;
  const seedling = crop('seedling-mass') * area;
  return final / (1 + (final / seedling - 1) * Math.exp(-crop('growth') * warmth * time));
}

describe('a crop alone in a bed', () => {
  it.each([
    [12, 12],
    [20, 20],
    [35, 22],
  ])(
    'with ample nitrate grows as a logistic in thermal time at %d degC (exact solution)',
    (temperature, counted) => {
      const run = bed({ nitrate: 1e7 }, temperature);
      const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'lettuce'));
      const exact = run.samples.map(({ time }) => logistic(time, counted - crop('base-temperature')));
      expect(relativeDeviation(masses, exact)).toBeLessThan(1e-5);
    },
  );

  it('with ample nitrate keeps its nitrogen on the critical curve (Justes et al. 1994 form; exact solution)', () => {
    const run = bed({ nitrate: 1e7 }, 20);
    const held = run.samples.map((sample) => amountOf(run, sample, 'crop-nitrogen', 'lettuce'));
    const wanted = run.samples.map((sample) => {
      const mass = amountOf(run, sample, 'crop-mass', 'lettuce');
      // The plateau joins the curve without a corner: (w^4 + p^4)^(1/4) for the larger of the two.
      const tonnes = ((mass / area / 100) ** 4 + crop('nitrogen-plateau') ** 4) ** 0.25;
      return mass * crop('nitrogen-a') * tonnes ** -crop('nitrogen-b');
    });
    expect(relativeDeviation(held, wanted)).toBeLessThan(1e-5);
  });

  it('takes ammonium for its largest share and no more where both abound (limit)', () => {
    const run = bed({ nitrate: 1e7, tan: 1e5 }, 20);
    const tan = extentOf(run, lastOf(run), 'tan-uptake@lettuce');
    const nitrate = extentOf(run, lastOf(run), 'nitrate-uptake@lettuce');
    expect(tan / (tan + nitrate)).toBeCloseTo(parameters.value('crop.tan-share'), 4);
  });

  it('without nitrogen in the water stops where its nitrogen is spread to the minimum (limit)', () => {
    const run = bed({}, 20);
    const last = lastOf(run);
    const share =
      amountOf(run, last, 'crop-nitrogen', 'lettuce') / amountOf(run, last, 'crop-mass', 'lettuce');
    expect(share / crop('nitrogen-minimum')).toBeCloseTo(1, 2);
    expect(amountOf(run, last, 'crop-nitrogen', 'lettuce')).toBe(
      amountOf(run, run.samples[0], 'crop-nitrogen', 'lettuce'),
    );
  });

  it('stands still below its base temperature', () => {
    const run = bed({ nitrate: 100 }, crop('base-temperature') - 1);
    const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'lettuce'));
    expect(new Set(masses).size).toBe(1);
  });
});
