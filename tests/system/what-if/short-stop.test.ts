import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../packages/core/src/scenario/scenario.js';
import type { SimulateOptions } from '../../../packages/core/src/run/driver.js';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario, without } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';
import { integrators } from '../../support/integrators.js';

/** The glasshouse for so long, undisturbed, with or without a pump stop of 0.02 d (29 min) at a time. */
function glasshouse(days: number, stop: number | undefined): Scenario {
  const base = without(shippedScenario('glasshouse', days), 'harvest-fish', 'grade', 'stock');
  const pump = base.pumps[0].name;
  const stops = [
    { at: stop ?? 0, action: { kind: 'pump', pump, running: false } },
    { at: (stop ?? 0) + 0.02, action: { kind: 'pump', pump, running: true } },
  ] as const;
  return { ...base, actions: stop === undefined ? base.actions : [...base.actions, ...stops] };
}

/** What the stop did to TAN in a tank at the next output, mg/L. */
function effect(days: number, stop: number, options: SimulateOptions): number {
  const [stopped, whole] = [stop, undefined].map((each) => doneRun(glasshouse(days, each), options));
  const day = Math.ceil(stop);
  return timedCourse(stopped, 'tan').at(day) - timedCourse(whole, 'tan').at(day);
}

describe('a pump stop of 0.02 d', () => {
  it('changes a year at every tolerance, because no step may pass over an action', () => {
    const [coarse, usual, fine] = [1e-4, 1e-6, 1e-8].map((tolerance) => effect(365, 200.9, { tolerance }));
    expect(Math.abs(fine)).toBeGreaterThan(1e-4);
    expect(usual / fine).toBeCloseTo(1, 2);
    expect(coarse / fine).toBeCloseTo(1, 0);
  });

  it('changes 60 days with the other integrator by as much', () => {
    const [own, other] = (['rosenbrock', 'odex'] as const).map((integrator) =>
      effect(60, 40.9, { integrator: integrators[integrator], tolerance: 1e-6 }),
    );
    expect(Math.abs(own)).toBeGreaterThan(1e-4);
    expect(other / own).toBeCloseTo(1, 2);
  });
});
