import { it, expect } from 'vitest';
import { doneRun, amountOf } from '../support/run-of.js';
import { teachingSystem } from '../support/teaching-system.js';
it('x', () => {
  const sc = teachingSystem({ days: 9 });
  for (const [integrator, tolerance] of [['rosenbrock',1e-6],['rosenbrock',1e-8],['rosenbrock',1e-10],['odex',1e-5],['odex',1e-6],['odex',1e-7],['odex',1e-8],['odex',1e-9]] as const) {
    const run = doneRun(sc, { integrator, tolerance });
    console.log(integrator, tolerance, run.samples.map(s => amountOf(run, s, 'solids', 'settler').toPrecision(10)).join(' '), JSON.stringify(run.work));
  }
  expect(1).toBe(1);
});
