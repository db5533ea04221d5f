import { describe, expect, it } from 'vitest';
import { budgetsOf, relativeResidual, worstResidual } from '../../../packages/core/src/result/budget.js';
import { deathsOf } from '../../../packages/core/src/result/deaths.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { edited } from '../../product/faults/small-system.js';
import { amountOf, doneRun, lastOf } from '../../support/run-of.js';

describe('a cohort that was wiped out', () => {
  const run = doneRun(
    readScenario(
      edited(
        ['days: 30', 'days: 400'],
        ['  - { at: 10 d, for: 6 h, pump-off: main }', '  - { at: 10 d, for: 3 d, power-cut: all }'],
      ),
      { file: 'small.yaml' },
    ),
  );
  const end = lastOf(run);

  it('is gone to the last part of a fish, booked as dead, and the run goes on to its end', () => {
    for (const component of ['fish-number', 'fish-mass', 'fish-fat'])
      expect(amountOf(run, end, component, 'tilapia'), component).toBe(0);
    expect(run.events.some(({ kind }) => kind === 'fish-death')).toBe(true);
    expect(deathsOf(run)[0].wipedOut).toBeLessThan(14);
  });

  it('closes every balance', () => {
    expect(relativeResidual(worstResidual(budgetsOf(run)).budget)).toBeLessThan(1e-9);
  });
});
