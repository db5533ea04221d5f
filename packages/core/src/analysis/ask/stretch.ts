import { runningMean } from '../../result/running-mean.js';
import { NoAnswerError } from './no-answer-error.js';
import type { Window } from './window.js';

/** Values at ascending times, straight lines between them. */
export interface Stretch {
  readonly times: readonly number[];
  readonly values: Float64Array;
}

/** The straight line between two points of a stretch. */
function between({ times, values }: Stretch, after: number, time: number): number {
  const share = (time - times[after - 1]) / (times[after] - times[after - 1]);
  return values[after - 1] + share * (values[after] - values[after - 1]);
}

/** Room for rounding of the times of outputs, d. */
const instant = 1e-9;

/** The part of a course from one time to another, with values on the lines at its ends. */
function cut(course: Stretch, from: number, to: number): Stretch {
  const { times, values } = course;
  const cutTimes: number[] = [];
  const cutValues: number[] = [];
  times.forEach((time, i) => {
    const before = i > 0 ? times[i - 1] : time;
    for (const edge of [from, to]) {
      if (before < edge - instant && time > edge + instant) {
        cutTimes.push(edge);
        cutValues.push(between(course, i, edge));
      }
    }
    if (time >= from - instant && time <= to + instant) {
      cutTimes.push(time);
      cutValues.push(values[i]);
    }
  });
  const sorted = cutTimes.map((time, i) => ({ time, value: cutValues[i] })).sort((a, b) => a.time - b.time);
  return { times: sorted.map(({ time }) => time), values: Float64Array.from(sorted, ({ value }) => value) };
}

/**
 * What a measure looks at: the course within the window, then its running means over the averaging time,
 * every mean lying wholly within the window. Throws NoAnswerError where the course ends too early.
 */
export function stretchOf(course: Stretch, window: Window): Stretch {
  const last = course.times[course.times.length - 1];
  const to = window.to ?? last;
  if (to > last + instant || to - window.from < window.averaging - instant)
    throw new NoAnswerError(`the run ends on day ${last}`);
  const { times, values } = cut(course, window.from, to);
  if (window.averaging === 0) return { times, values };
  const means = runningMean(times, values, window.averaging);
  const full = times.findIndex((time) => time - times[0] >= window.averaging * (1 - 1e-9));
  return { times: times.slice(full), values: means.slice(full) };
}
