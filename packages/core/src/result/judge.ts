/** Integral from times[0] to each time of the straight lines through the values. */
function integral(times: readonly number[], values: ArrayLike<number>): Float64Array {
  const whole = new Float64Array(times.length);
  for (let i = 1; i < times.length; i++) {
    whole[i] = whole[i - 1] + ((times[i] - times[i - 1]) * (values[i] + values[i - 1])) / 2;
  }
  return whole;
}

/** Whether a window reaches from one time to another, but for rounding: the first full one is not missed by the last bit. */
export function fillsWindow(from: number, to: number, window: number): boolean {
  return to - from >= window * (1 - 1e-9);
}

/**
 * Mean over the window that ends at each time, of the straight lines through (time, value): exact for
 * them. NaN where the window reaches back past the first time. A window of 0 gives the values back.
 * @param times ascending
 * @param window same unit as the times, 0 or more
 */
export function runningMean(
  times: readonly number[],
  values: ArrayLike<number>,
  window: number,
): Float64Array {
  if (window === 0) return Float64Array.from(values);
  const whole = integral(times, values);
  const means = new Float64Array(times.length).fill(Number.NaN);
  let j = 0;
  for (let i = 0; i < times.length; i++) {
    const time = times[i];
    const from = Math.max(time - window, times[0]);
    if (!fillsWindow(times[0], time, window)) continue;
    while (j + 1 < times.length && times[j + 1] <= from) j++;
    const past = from - times[j];
    const slope = j + 1 < times.length ? (values[j + 1] - values[j]) / (times[j + 1] - times[j]) : 0;
    const before = whole[j] + past * (values[j] + (slope * past) / 2);
    means[i] = (whole[i] - before) / (time - from);
  }
  return means;
}

/**
 * The means that a limit judges: over its averaging time, or, where samples are farther apart than that, the values as they
 * are.
 * @param times ascending, d
 * @param averaging d; 0: the values themselves
 * @param every output step, d; a mean over no less than it is taken everywhere
 */
export function meansOf(
  times: readonly number[],
  values: ArrayLike<number>,
  averaging: number,
  every: number,
): Float64Array {
  const means = runningMean(times, values, averaging);
  if (averaging >= every) return means;
  for (let i = 0; i < means.length; i++) {
    const resolved = i > 0 && times[i] - times[i - 1] <= averaging * (1 + 1e-9);
    if (!resolved) means[i] = values[i];
  }
  return means;
}

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
  /** d. */
  readonly worstAt?: number;
}

/** Part of an output step, as shares of its length, in which the line from a to b is above 0; undefined if none. */
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
  matters?: (index: number) => boolean,
): Verdict {
  return judgeMeans(times, runningMean(times, values, averaging), limit, matters);
}

/**
 * Compares means at some times with a limit, as `judge` does.
 * @param times d, ascending
 * @param matters whether anyone the limit is for was there at each time
 */
export function judgeMeans(
  times: readonly number[],
  means: Float64Array,
  limit: { readonly value: number; readonly direction: Direction },
  matters: (index: number) => boolean = () => true,
): Verdict {
  const sign = limit.direction === 'above' ? 1 : -1;
  const excess = (i: number): number => sign * (means[i] - limit.value);
  let worst = -1;
  let first: number | undefined;
  let total = 0;
  /** Excess at the time before; NaN where it is not known or does not matter. */
  let before = Number.NaN;
  for (let i = 0; i < times.length; i++) {
    const was = before;
    const now = matters(i) ? excess(i) : Number.NaN;
    before = now;
    if (Number.isNaN(now)) continue;
    if (worst < 0 || now > excess(worst)) worst = i;
    if (now > 0) first ??= times[i];
    const part = Number.isNaN(was) ? undefined : positivePart(was, now);
    if (part === undefined) continue;
    const step = times[i] - times[i - 1];
    total += step * (part.to - part.from);
    const began = times[i - 1] + step * part.from;
    if (first === undefined || began < first) first = began;
  }
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
