import { describe, expect, it } from 'vitest';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { timedCourse, type TimedCourse } from '../../support/timed-course.js';

const stocked = 1;
const courses = (name: string) => {
  const run = doneRun(shippedScenario(name));
  return { tan: timedCourse(run, 'tan'), nitrite: timedCourse(run, 'nitrite') };
};
const atOnce = courses('double-stock');
const inSteps = courses('double-stock-steps');

describe('doubling stock in one day', () => {
  it('peaks in TAN, then in nitrite, because the biofilm was grown to the old load', () => {
    const tan = atOnce.tan.peak(stocked);
    const nitrite = atOnce.nitrite.peak(stocked);
    expect(tan.value).toBeGreaterThan(2 * atOnce.tan.at(stocked));
    expect(nitrite.value).toBeGreaterThan(2 * atOnce.nitrite.at(stocked));
    expect(tan.time - stocked).toBeLessThan(3);
    expect(nitrite.time).toBeGreaterThan(tan.time);
  });

  it('is back at the old level after 1 to 4 weeks at 25 degC, because biofilm doubles within days', () => {
    for (const course of [atOnce.tan, atOnce.nitrite]) {
      const back = course.backTo(course.at(stocked), course.peak(stocked).time) - stocked;
      expect(back).toBeGreaterThanOrEqual(7);
      expect(back).toBeLessThanOrEqual(28);
    }
  });
});

describe('doubling stock in four steps two weeks apart', () => {
  it('rises less than half as far above the old level, because each step meets biofilm grown to the last', () => {
    for (const quantity of ['tan', 'nitrite'] as const) {
      const rise = (course: TimedCourse): number => course.peak(stocked).value - course.at(stocked);
      const gentle = rise(inSteps[quantity]);
      expect(gentle).toBeGreaterThan(0);
      expect(gentle).toBeLessThan(0.5 * rise(atOnce[quantity]));
    }
  });
});
