import { describe, expect, it } from 'vitest';
import { budgetOf, relativeResidual } from '../../../packages/core/src/result/budget.js';
import { runOf } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';

/** The glasshouse with its mains rationed to 34 L a day for eight weeks: media beds run nearly dry and fill again. */
function rationed() {
  const whole = shippedScenario('glasshouse', 112);
  const caps = [
    { at: 28, action: { kind: 'top-up', dailyCap: 0.034 } },
    { at: 84, action: { kind: 'top-up', dailyCap: 0.16 } },
  ] as const;
  return { ...whole, actions: [...whole.actions, ...caps] };
}

describe('a media bed that ran dry, with lime scale, and is filled again', () => {
  const run = runOf(rationed());
  const close = runOf(rationed(), { tolerance: 1e-6 });

  it('runs to its end: its ions, taken anew in the morning, are a jump after which the steps begin small', () => {
    expect(run.outcome).toEqual({ kind: 'done', time: 112 });
    expect(close.outcome).toEqual({ kind: 'done', time: 112 });
  });

  it('ends where a tenth of the tolerance ends, in the bed and in the tank', () => {
    for (const [quantity, place] of [
      ['calcium', 'media-bed-1'],
      ['alkalinity', 'media-bed-1'],
      ['nitrate', 'tank-1'],
    ] as const)
      for (const day of [87, 90, 112]) {
        const [coarse, fine] = [run, close].map((each) => timedCourse(each, quantity, place).at(day));
        expect(Math.abs(coarse - fine), `${quantity}@${place} on day ${day}`).toBeLessThan(
          2e-3 * Math.abs(fine),
        );
      }
  });

  it('closes its balances of nitrogen, calcium and charge', () => {
    for (const quantity of ['nitrogen', 'calcium', 'charge'] as const)
      expect(relativeResidual(budgetOf(run, quantity, 'system')), quantity).toBeLessThan(1e-9);
  });
});
