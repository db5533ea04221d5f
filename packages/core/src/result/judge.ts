import { runningMean } from './running-mean.js';

/** Which way a limit is passed. */
export type Direction = 'above' | 'below';

/** How a course of values stood to a limit. */
export interface Verdict {
  /** Whether a full averaging window fell inside the run while it mattered. */
  readonly judged: boolean;
  readonly passed: boolean;
  /** When first passed, d; absent when never. */
  readonly first?: number;
  /** How long beyond the limit in all, d. */
  readonly total: number;
  /** Value farthest towards (or beyond) the limit, and when; absent when not judged. */
  readonly worst?: number;
  readonly worstAt?: number;
}

/** Part of a stretch, as shares of its length, in which the line from a to b is above 0; undefined if none. */
function positivePart(a: number, b: number): { from: number; to: number } | undefined {
  if (a <= 0 && b <= 0) return undefined;
  if (a > 0 && b > 0) return { from: 0, to: 1 };
  const root = a / (a - b);
  return a > 0 ? { from: 0, to: root } : { from: root, to: 1 };
}

/**
 * Compares running means with a limit. Between output times the mean is taken to run straight, so the
 * time of passing is interpolated.
 * @param times output times, d
 * @param averaging window, d; 0 compares the values themselves
 * @param matters whether anyone the limit is for was there at each time
 */
export function judge(
  times: readonly number[],
  values: ArrayLike<number>,
  limit: { readonly value: number; readonly direction: Direction },
  averaging: number,
  matters: (index: number) => boolean = () => true,
): Verdict {
  const sign = limit.direction === 'above' ? 1 : -1;
  const means = runningMean(times, values, averaging);
  const excess = means.map((mean) => sign * (mean - limit.value));
  let worst = -1;
  let first: number | undefined;
  let total = 0;
  times.forEach((time, i) => {
    if (Number.isNaN(excess[i]) || !matters(i)) return;
    if (worst < 0 || excess[i] > excess[worst]) worst = i;
    if (excess[i] > 0) first ??= time;
    if (i === 0 || Number.isNaN(excess[i - 1]) || !matters(i - 1)) return;
    const part = positivePart(excess[i - 1], excess[i]);
    if (part === undefined) return;
    const step = time - times[i - 1];
    total += step * (part.to - part.from);
    const began = times[i - 1] + step * part.from;
    if (first === undefined || began < first) first = began;
  });
  if (worst < 0) return { judged: false, passed: false, total: 0 };
  return {
    judged: true,
    passed: first !== undefined,
    ...(first === undefined ? {} : { first }),
    total,
    worst: means[worst],
    worstAt: times[worst],
  };
}
