import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../../packages/core/src/result/budget.js';
import { fatesOf } from '../../../packages/core/src/result/fates.js';
import { concentration, doneRun, lastOf } from '../../support/run-of.js';
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
  it('keeps most of what it brings in the water, because evaporation takes none of it', () => {
    const [well, mains] = ['well-water', 'glasshouse'].map((name) => doneRun(shippedScenario(name)));
    const brought = (run: typeof well): number =>
      fatesOf(budgetOf(run, 'nitrogen', 'system')).from.find(({ name }) => name === 'source water')?.amount ??
      0;
    const held = (run: typeof well): number =>
      run.model.layout.vessels.reduce(
        (sum, vessel, index) =>
          sum + concentration(run, lastOf(run), 'nitrate', vessel) * lastOf(run).volume[index],
        0,
      );
    const more = brought(well) - brought(mains);
    expect(more).toBeGreaterThan(100);
    expect((held(well) - held(mains)) / more).toBeGreaterThan(0.6);
    expect((held(well) - held(mains)) / more).toBeLessThan(1);
  });
});

describe('a refill with chlorinated mains', () => {
  it('raises TAN by a third or more for days where mains freed of chlorine lower it, because biofilm is killed', () => {
    const tan = timedCourse(doneRun(shippedScenario('chlorinated-refill')), 'tan');
    const freed = timedCourse(doneRun(without(shippedScenario('chlorinated-refill'), 'medicate')), 'tan');
    expect(tan.at(31)).toBeGreaterThan(1.33 * tan.at(30));
    expect(tan.at(34)).toBeGreaterThan(1.2 * freed.at(34));
    expect(freed.at(30.25)).toBeLessThan(tan.at(29.75));
  });
});
