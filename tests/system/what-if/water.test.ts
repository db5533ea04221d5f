import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../../packages/core/src/result/budget.js';
import { fatesOf } from '../../../packages/core/src/result/fates.js';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario, without } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';

const whole = (volumes: ArrayLike<number>): number =>
  Array.from(volumes).reduce((sum, each) => sum + each, 0);

describe('top-up rationed to a third for eight weeks', () => {
  const end = 84;
  const rationed = doneRun(shippedScenario('dry-spell'));
  const free = doneRun(without(shippedScenario('dry-spell'), 'top-up'));

  it('raises chloride by a tenth or more, because what evaporates leaves its salt behind', () => {
    const ratio =
      timedCourse(rationed, 'chloride', 'sump').at(end) / timedCourse(free, 'chloride', 'sump').at(end);
    expect(ratio).toBeGreaterThan(1.1);
    expect(ratio).toBeLessThan(whole(free.samples[end].volume) / whole(rationed.samples[end].volume));
  });

  it('keeps the pump going in a sump that is big enough, and not in that of the glasshouse', () => {
    const trips = (run: typeof rationed): number =>
      run.events.filter(({ kind, time }) => kind.includes('pump') && time > 28).length;
    const small = shippedScenario('glasshouse');
    const own = doneRun({
      ...small,
      days: 60,
      actions: shippedScenario('dry-spell').actions.filter(({ at }) => at < 60),
    });
    expect(trips(rationed)).toBe(0);
    expect(trips(own)).toBeGreaterThan(0);
  });
});

describe('source water with 15 instead of 2 mg/L of nitrate-N', () => {
  it('leaves a fifth of what it brings as nitrogen gas, and base behind, because settled solids breathe nitrate, and the rest in the water, because crops have enough', () => {
    const [well, mains] = ['well-water', 'glasshouse'].map((name) => doneRun(shippedScenario(name)));
    const fates = ([well, mains] as const).map((run) => fatesOf(budgetOf(run, 'nitrogen', 'system')));
    const more = (side: 'from' | 'to', what: string): number => {
      const [one, other] = fates.map((each) => each[side].find(({ name }) => name === what)?.amount ?? 0);
      return one - other;
    };
    const brought = more('from', 'source water');
    expect(brought).toBeGreaterThan(200);
    expect(more('to', 'nitrogen gas') / brought).toBeGreaterThan(0.17);
    expect(more('to', 'nitrogen gas') / brought).toBeLessThan(0.27);
    expect(more('to', 'kept in water') / brought).toBeGreaterThan(0.7);
    expect(Math.abs(more('to', 'harvested crop') / brought)).toBeLessThan(0.02);
    const end = (run: typeof well, component: 'nitrate' | 'alkalinity'): number =>
      timedCourse(run, component).at(180);
    expect(end(well, 'nitrate') / end(mains, 'nitrate')).toBeCloseTo(1.27, 1);
    expect(end(well, 'alkalinity') / end(mains, 'alkalinity')).toBeCloseTo(1.34, 1);
  });
});

describe('a refill with chlorinated mains', () => {
  it('raises TAN by a fifth to a third for a week where mains freed of chlorine do not, because biofilm is killed', () => {
    const tan = timedCourse(doneRun(shippedScenario('chlorinated-refill')), 'tan');
    const freed = timedCourse(doneRun(without(shippedScenario('chlorinated-refill'), 'medicate')), 'tan');
    for (const day of [31, 34, 36]) {
      expect(tan.at(day) / tan.at(30)).toBeGreaterThan(1.2);
      expect(tan.at(day) / tan.at(30)).toBeLessThan(1.35);
    }
    expect(tan.at(34)).toBeGreaterThan(1.2 * freed.at(34));
    expect(freed.at(31)).toBeLessThan(tan.at(30));
  });
});
