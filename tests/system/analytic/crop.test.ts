import { seriesOf } from '@leat/core';
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

function bed(water: Partial<StartWater>, temperature: number, light = 17): Run {
  const sump = vessel('sump', 100, { temperature: constant(temperature) });
  const start = [startOf(sump, { water: stillWater(1000, 7.5, water) })];
  const plantings = [planting('lettuce', 'sump', 'lettuce-butterhead', area)];
  // So much nitrate is no salt here.
  const overrides = [
    { id: 'crop.salt-dilution', value: 1e9 },
    { id: 'crop.k-nitrate', value: 1e-3 },
    { id: 'crop.k-tan', value: 1e-3 },
  ];
  return doneRun(scenarioOf([sump], { start, plantings, days: 40, light: constant(light), overrides }), {
    tolerance: 1e-8,
  });
}

/** Share of growth at a pH: 1 / (1 + s (pH - p) + 10^(half - pH)), the first bend 0.1 ln(1 + e^(10 x)). */
function leftAt(pH: number): number {
  const over = 0.1 * Math.log1p(Math.exp(10 * (pH - parameters.value('crop.ph-high'))));
  return 1 / (1 + parameters.value('crop.ph-slope') * over + 10 ** (parameters.value('crop.ph-half') - pH));
}

/** Expolinear growth from the seedling: W = (c/r) ln(1 + (e^(r W0/c) - 1) e^(r t)), r and c less by what pH takes. */
function expolinear(time: number, warmth: number, light: number, pH: number): number {
  const whole = crop('optimum-temperature') - crop('base-temperature');
  const r = (leftAt(pH) * crop('growth') * warmth * light) / (parameters.value('crop.k-light') + light);
  const c = (leftAt(pH) * crop('light-use') * light * area * warmth) / whole;
  const seedling = crop('seedling-mass') * area;
  return (c / r) * Math.log(1 + Math.expm1((r * seedling) / c) * Math.exp(r * time));
}

describe('a crop alone in a bed', () => {
  it.each([
    [12, 12, 17],
    [20, 20, 17],
    [35, 22, 17],
    [20, 20, 4],
  ])(
    'with ample nitrate grows by its mass, then by its light, at %d degC (exact solution)',
    (temperature, counted, light) => {
      const run = bed({ nitrate: 1e4 }, temperature, light);
      const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'lettuce'));
      // So much base holds the pH; nothing but the crop reads it in this system.
      const { values } = seriesOf(run, 'pH@sump');
      for (const pH of values) expect(pH).toBeCloseTo(values[0], 3);
      const exact = run.samples.map(({ time }) =>
        expolinear(time, counted - crop('base-temperature'), light, values[0]),
      );
      expect(relativeDeviation(masses, exact)).toBeLessThan(1e-5);
    },
  );

  it('with ample nitrate keeps its nitrogen on the critical curve (Justes et al. 1994 form; exact solution)', () => {
    const run = bed({ nitrate: 1e4 }, 20);
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
    const run = bed({ nitrate: 1e4, ammonia: 4000 }, 20);
    const tan = extentOf(run, lastOf(run), 'tan-uptake@lettuce');
    const nitrate = extentOf(run, lastOf(run), 'nitrate-uptake@lettuce');
    // At pH 7.5 acid takes 1 / (1 + 10^(4.19 - 7.5)) of it, half a thousandth.
    expect(tan / (tan + nitrate)).toBeCloseTo(
      parameters.value('crop.tan-share') / (1 + 10 ** (parameters.value('crop.tan-ph-half') - 7.5)),
      5,
    );
  });

  it('without nitrogen in the water stops where its nitrogen is spread to the least share of the critical (limit)', () => {
    const run = bed({}, 20);
    const last = lastOf(run);
    const share =
      amountOf(run, last, 'crop-nitrogen', 'lettuce') / amountOf(run, last, 'crop-mass', 'lettuce');
    // Twice the seedling is far below the plateau, where critical nitrogen is level: a p^-b with p = 1.
    const least = parameters.value('crop.nitrogen-least') * crop('nitrogen-a');
    expect(share / least).toBeCloseTo(1, 2);
    expect(amountOf(run, last, 'crop-nitrogen', 'lettuce')).toBe(
      amountOf(run, run.samples[0], 'crop-nitrogen', 'lettuce'),
    );
  });

  it('stands still in the dark', () => {
    const run = bed({ nitrate: 100 }, 20, 0);
    const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'lettuce'));
    expect(new Set(masses).size).toBe(1);
  });

  it('stands still below its base temperature', () => {
    const run = bed({ nitrate: 100 }, crop('base-temperature') - 1);
    const masses = run.samples.map((sample) => amountOf(run, sample, 'crop-mass', 'lettuce'));
    expect(new Set(masses).size).toBe(1);
  });
});
