import type { WaterComponent } from '../../packages/core/src/processes/components.js';
import type { Run } from '../../packages/core/src/run/run.js';
import { courseOf } from './run-of.js';

/** A quantity in time. */
export interface TimedCourse {
  /** Value at an output time, d. */
  at(time: number): number;
  /** Highest value and its time, d, from a time on. */
  peak(from: number): { readonly value: number; readonly time: number };
  /** First output time, d, after a time at which the value is not above a level. */
  backTo(level: number, after: number): number;
}

/** Course of a concentration in a vessel with the times of the run. */
export function timedCourse(run: Run, component: WaterComponent, vessel = 'tank-1'): TimedCourse {
  const values = courseOf(run, component, vessel);
  const times = run.samples.map(({ time }) => time);
  const index = (found: number, what: string): number => {
    if (found < 0) throw new RangeError(`no output ${what}`);
    return found;
  };
  return {
    at: (time) =>
      values[
        index(
          times.findIndex((each) => Math.abs(each - time) < 1e-6),
          `at ${time}`,
        )
      ],
    peak: (from) => {
      const value = Math.max(...values.filter((_, i) => times[i] >= from));
      return { value, time: times[values.indexOf(value)] };
    },
    backTo: (level, after) =>
      times[
        index(
          times.findIndex((time, i) => time > after && values[i] <= level),
          `at or under ${level}`,
        )
      ],
  };
}
