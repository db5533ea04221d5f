import { describe, expect, it } from 'vitest';
import { courseOf, doneRun } from '../../../support/run-of.js';
import { scenarioOf, startOf, stillWater, vessel } from '../../../support/scenario-builder.js';
import { integrators } from '../../../support/integrators.js';

describe('nitrite oxidisers in water without ammonia', () => {
  it.each(['rosenbrock', 'odex'] as const)('do not draw TAN below zero (%s)', (integrator) => {
    const sump = vessel('sump', 1, { surface: 50, aeration: 100 });
    const start = [startOf(sump, { water: stillWater(2, 7.5, { nitrite: 10 }), nob: 0.05 })];
    const run = doneRun(scenarioOf([sump], { days: 5, start }), { integrator: integrators[integrator] });
    expect(Math.min(...courseOf(run, 'tan', 'sump'))).toBe(0);
    expect(courseOf(run, 'nitrite', 'sump').at(-1)).toBeLessThan(0.5);
  });
});
