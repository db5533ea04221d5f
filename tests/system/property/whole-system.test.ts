import { describe, expect, it } from 'vitest';
import { budgetsOf, worstResidual } from '../../../packages/core/src/result/budget.js';
import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { doneRun } from '../../support/run-of.js';
import { teachingSystem } from '../../support/teaching-system.js';
import { integrators } from '../../support/integrators.js';

const seed = createParameters().value('biofilm.seed-aob');

/** Largest |a - b| / (1e-4 |b| + the absolute tolerance) over every state of every sample, and where. */
function largestGap(one: Run, other: Run): { gap: number; where: string } {
  const absolute = absoluteTolerances(one.model, one.tolerance);
  let worst = { gap: 0, where: 'nowhere' };
  one.samples.forEach(({ time, y }, i) => {
    y.forEach((value, state) => {
      const there = other.samples[i].y[state];
      const gap = Math.abs(value - there) / (1e-4 * Math.abs(there) + absolute[state]);
      if (gap <= worst.gap) return;
      const { component, place } = one.model.layout.states[state];
      worst = { gap, where: `${component}@${place} at day ${time}: ${value} and ${there}` };
    });
  });
  return worst;
}

describe.each([
  ['cycled', undefined],
  ['never cycled', seed],
])('a whole system, %s, over 30 d', (_name, start) => {
  const scenario = teachingSystem({ days: 30, ...(start !== undefined && { seed: start }) });
  const run = doneRun(scenario, { tolerance: 1e-6 });

  it('closes every budget of every vessel to 1e-9 of throughput', () => {
    const { budget, share } = worstResidual(budgetsOf(run));
    expect(share, `${budget.quantity} of ${budget.place}`).toBeLessThan(1e-9);
  });

  it('agrees with the explicit integrator at 1e-9 to 1e-4 relative plus the absolute tolerance', () => {
    const explicit = doneRun(scenario, { integrator: integrators.odex, tolerance: 1e-9 });
    const { gap, where } = largestGap(run, explicit);
    expect(gap, where).toBeLessThan(1);
    expect(worstResidual(budgetsOf(explicit)).share).toBeLessThan(1e-9);
  });

  it('agrees with the explicit integrator at the same tolerance of 1e-6', () => {
    const { gap, where } = largestGap(
      run,
      doneRun(scenario, { integrator: integrators.odex, tolerance: 1e-6 }),
    );
    expect(gap, where).toBeLessThan(1);
  });

  it('goes nowhere below ten absolute tolerances under zero', () => {
    const absolute = absoluteTolerances(run.model, run.tolerance);
    const lows = run.samples.flatMap(({ y }) => Array.from(y, (value, state) => value / absolute[state]));
    expect(lows.reduce((low, next) => Math.min(low, next), 0)).toBeGreaterThan(-10);
  });
});
