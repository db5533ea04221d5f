import type { Course, CourseSet } from '../report/courses.js';

/** Lowest and highest value that an axis shows. */
export type Domain = readonly [low: number, high: number];

/** A bound farther away than this share beyond what the values reach is named at the edge, not drawn. */
const nearby = 0.8;

const finite = (values: readonly number[]): number[] => values.filter((value) => Number.isFinite(value));

/** Lowest and highest of all values of some courses; a ghost range counts. */
function reachOf(courses: readonly Course[], more: readonly number[]): Domain {
  let low = Infinity;
  let high = -Infinity;
  const lists = courses.flatMap(({ lines, range }) => [
    ...lines.map(({ values }) => values),
    ...(range === undefined ? [] : [range.low, range.high]),
  ]);
  for (const values of [...lists, more]) {
    for (const value of finite(values)) {
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low > high ? [0, 1] : [low, high];
}

/** A reach with values that lie far off taken in, as far as what was there keeps half of the whole. */
function widened([low, high]: Domain, far: readonly number[], fromZero: boolean): Domain {
  const [lowest, highest] = reachOf([], [...far, low, high]);
  const span = high - (fromZero ? Math.min(0, low) : low);
  return [Math.max(lowest, low - span), Math.min(highest, high + span)];
}

/**
 * One axis for all runs of a set: all values, bounds that are near, a little air.
 * @param more further values that must fit, such as the inner band
 * @param far values that are taken in as far as they leave the others half of the axis, such as the outer band
 */
export function domainOf(
  { runs, fromZero }: CourseSet,
  more: readonly number[] = [],
  far: readonly number[] = [],
): Domain {
  const courses = runs.filter((course) => course !== undefined);
  const [low, high] = widened(reachOf(courses, more), far, fromZero);
  const span = fromZero ? Math.max(high, 0) : Math.max(high - low, 0.5);
  const bounds = courses
    .flatMap(({ limits }) => limits.map(({ value }) => value))
    .filter((value) => value <= high + nearby * span && value >= low - nearby * span);
  const top = Math.max(high, ...bounds);
  const bottom = fromZero ? Math.min(0, low) : Math.min(low, ...bounds);
  const reach = top - bottom;
  if (!(reach > 0)) return [bottom, bottom + 1];
  const words = (side: 'above' | 'below'): number =>
    courses.some(({ limits }) =>
      limits.some(({ value }) => (side === 'above' ? value > top || value > 0.97 * top : value < bottom)),
    )
      ? 0.15
      : 0.06;
  return [fromZero ? bottom : bottom - words('below') * reach, top + words('above') * reach];
}
