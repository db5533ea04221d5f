import { describe, expect, it } from 'vitest';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { timedCourse, type TimedCourse } from '../../support/timed-course.js';

const stocked = 1;
const end = 63;
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

  it('comes down to what the double load holds, TAN in two weeks or so to half as much again as before and nitrite in four to a quarter more, because biofilm doubles within days', () => {
    for (const [course, least, most, weeks] of [
      [atOnce.tan, 1.4, 1.6, 2],
      [atOnce.nitrite, 1.2, 1.35, 4],
    ] as const) {
      const back = course.backTo(1.1 * course.at(end), course.peak(stocked).time) - stocked;
      expect(Math.abs(back - 7 * weeks)).toBeLessThan(3);
      expect(course.at(end) / course.at(stocked)).toBeGreaterThan(least);
      expect(course.at(end) / course.at(stocked)).toBeLessThan(most);
    }
  });
});

describe('doubling stock in four steps two weeks apart', () => {
  it('passes the level it ends at by a seventh at most, where doubling at once passes it by a third and more, because each step meets biofilm grown to the last', () => {
    for (const quantity of ['tan', 'nitrite'] as const) {
      const past = (course: TimedCourse): number => course.peak(stocked).value / course.at(end) - 1;
      expect(past(inSteps[quantity])).toBeLessThan(1 / 7);
      expect(past(atOnce[quantity])).toBeGreaterThan(1 / 3);
    }
  });
});
