import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetsOf, worstResidual } from '../../../packages/core/src/result/budget.js';
import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { networks } from '../../support/random-system.js';
import { doneRun } from '../../support/run-of.js';
import { integrators } from '../../support/integrators.js';

const settings = { seed: 20270301, numRuns: 120 };

/** Lowest state of any sample in absolute tolerances, alkalinity aside: that may truly be negative. */
function lowest(run: Run): number {
  const absolute = absoluteTolerances(run.model, run.tolerance);
  const states = run.model.layout.states.flatMap(({ component }, state) =>
    component === 'alkalinity' ? [] : [state],
  );
  return Math.min(...run.samples.flatMap(({ y }) => states.map((state) => y[state] / absolute[state])));
}

describe('random valid networks', () => {
  it('run to their end, close every budget of every vessel to 1e-9 of throughput, and go nowhere below zero', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const run = doneRun(scenario);
        const { budget, share } = worstResidual(budgetsOf(run));
        expect(share, `${budget.quantity} of ${budget.place}`).toBeLessThan(1e-9);
        expect(lowest(run)).toBeGreaterThan(-10);
      }),
      settings,
    );
  });

  it('close every budget with the explicit integrator too', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const actions = scenario.actions.filter(({ at }) => at < 1);
        const run = doneRun(
          { ...scenario, actions, days: 1 },
          { integrator: integrators.odex, tolerance: 1e-5 },
        );
        const { budget, share } = worstResidual(budgetsOf(run));
        expect(share, `${budget.quantity} of ${budget.place}`).toBeLessThan(1e-9);
      }),
      { ...settings, numRuns: 25 },
    );
  });
});
