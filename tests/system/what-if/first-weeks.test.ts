import { describe, expect, it } from 'vitest';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';

const fishless = doneRun(shippedScenario('fishless'));
const withFish = doneRun(shippedScenario('start-up'));

describe('a start-up, without fish or with', () => {
  it('peaks in TAN, then nitrite, then holds what was nitrite as nitrate, because each population waits for the food the other makes', () => {
    for (const run of [fishless, withFish]) {
      const [tan, nitrite] = (['tan', 'nitrite'] as const).map((each) => timedCourse(run, each).peak(0));
      expect(tan.value).toBeGreaterThan(5);
      expect(nitrite.value).toBeGreaterThan(5);
      expect(nitrite.time).toBeGreaterThan(tan.time + 5);
      expect(timedCourse(run, 'nitrate').at(56)).toBeGreaterThan(0.9 * nitrite.value);
    }
  });
});

describe('a start-up without fish', () => {
  it('takes a day of ammonium in a day after 4 to 6 weeks, because by then both populations are grown', () => {
    for (const component of ['tan', 'nitrite'] as const) {
      const course = timedCourse(fishless, component);
      const done = course.backTo(0.5, course.peak(0).time);
      expect(done).toBeLessThan(42);
      expect(course.at(55)).toBeLessThan(0.5);
    }
  });

  it('brings chloride with every gram of nitrogen, because the salt is a chloride: 2.53 g a g', () => {
    const chloride = timedCourse(fishless, 'chloride', 'sump');
    const nitrogen = (40 * 14.007) / 53.492;
    const posted = fishless.postings.filter(({ account }) => account === 'dosing');
    const sum = (component: string): number =>
      posted.filter((each) => each.component === component).reduce((total, { amount }) => total + amount, 0);
    expect(sum('tan')).toBeCloseTo(56 * nitrogen, 2);
    expect(sum('chloride') / sum('tan')).toBeCloseTo(35.453 / 14.007, 4);
    expect(chloride.at(56)).toBeGreaterThan(100);
  });
});
