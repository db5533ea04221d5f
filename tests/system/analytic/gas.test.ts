import { describe, expect, it } from 'vitest';
import { carbonDioxideSaturation } from '../../../packages/core/src/chemistry/acid-base.js';
import { oxygenSaturation } from '../../../packages/core/src/chemistry/gases.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { openRates } from '../../../packages/core/src/model/rates.js';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import { relativeDeviation } from '../../support/deviation.js';
import { concentration, courseOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from '../../support/scenario-builder.js';

const parameters = createParameters();

describe('gas exchange alone in a vessel', () => {
  it('brings oxygen to saturation as an exponential, by aeration and by the surface (exact solution)', () => {
    const sump = vessel('sump', 2, { aeration: 1.5, open: 3, temperature: constant(28) });
    const start = [startOf(sump, { water: stillWater(2, 7.5, { oxygen: 1 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 3, every: 0.25 }), { tolerance: 1e-8 });
    const surface = (parameters.value('gas.surface-velocity') * 3) / 2;
    const k = (1.5 + surface) * parameters.value('gas.theta') ** 8;
    const full = oxygenSaturation(parameters, 28);
    const exact = run.samples.map(({ time }) => full + (1 - full) * Math.exp(-k * time));
    expect(relativeDeviation(courseOf(run, 'oxygen', 'sump'), exact)).toBeLessThan(1e-7);
  });

  it('brings carbon dioxide to equilibrium with air from both sides and leaves alkalinity alone (limit)', () => {
    for (const pH of [6.2, 9]) {
      const sump = vessel('sump', 1, { aeration: 50 });
      const run = doneRun(
        scenarioOf([sump], { start: [startOf(sump, { water: stillWater(1.5, pH) })], days: 5 }),
      );
      const last = run.samples.length - 1;
      const water = waterChemistry(run.model.parameters, run.samples[last], 0);
      expect(water.carbonDioxide / carbonDioxideSaturation(parameters, 20)).toBeCloseTo(1, 5);
      expect(concentration(run, lastOf(run), 'alkalinity', 'sump')).toBeCloseTo(1.5, 12);
    }
  });

  it('loses ammonia by velocity x open surface x un-ionised part, all of it to the air account (limit of short times)', () => {
    const sump = vessel('sump', 0.5, { open: 2, temperature: constant(30) });
    const start = [startOf(sump, { water: stillWater(3, 8.6, { ammonia: 5 }) })];
    const days = 1e-3;
    const run = doneRun(scenarioOf([sump], { start, days, every: days }), { tolerance: 1e-9 });
    const [first, last] = run.samples;
    const { ammonia } = waterChemistry(run.model.parameters, first, 0);
    const velocity =
      parameters.value('gas.ammonia-velocity') * Math.exp(parameters.value('gas.ammonia-exponent') * 10);
    const lost = extentOf(run, last, 'ammonia-loss@sump');
    expect(lost / (velocity * 2 * ammonia * days)).toBeCloseTo(1, 3);
    expect((first.y[0] - last.y[0]) / lost).toBeCloseTo(1, 6);
  });

  it('does nothing in a closed vessel', () => {
    const run = doneRun(scenarioOf([vessel('sump', 1)], { days: 30 }));
    expect([...lastOf(run).y]).toEqual([...run.samples[0].y]);
    expect(openRates(run.model).system.rates).toBe(run.model.rows.length);
  });
});
