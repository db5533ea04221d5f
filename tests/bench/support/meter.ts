import { medianOf } from './median.js';

/** Times of one piece of work, ms of processor time. */
export interface Metered {
  readonly least: number;
  readonly median: number;
}

/** Time of the processor that this process has used, ms: what else runs on the machine counts less. */
function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Does some work once and tells its time, ms. */
export function once(work: () => void): number {
  const from = used();
  work();
  return used() - from;
}

/**
 * Meters some work so many times.
 * @param warm how often it is done before, unmetered
 */
export function meter(work: () => void, times: number, warm = 1): Metered {
  for (let i = 0; i < warm; i++) work();
  const all = Array.from({ length: times }, () => once(work)).sort((a, b) => a - b);
  return { least: all[0], median: all[times >> 1] };
}

/** Times of two pieces of work done by turns, ms of processor time. */
export interface Compared {
  /** Median of the quotients of the first over the second, each of two that were done one after the other. */
  readonly ratio: number;
  readonly first: number;
  readonly second: number;
}

/** Quotients of two pieces of work done by turns: what slows the machine for a while slows both. */
export function compared(first: () => number, second: () => number, rounds: number): Compared {
  const pairs = Array.from({ length: rounds }, () => [first(), second()] as const);
  return {
    ratio: medianOf(pairs.map(([a, b]) => a / b)),
    first: medianOf(pairs.map(([a]) => a)),
    second: medianOf(pairs.map(([, b]) => b)),
  };
}

/** Slope of log time over log size. */
export function exponent(sizes: readonly number[], times: readonly number[]): number {
  const x = sizes.map(Math.log);
  const y = times.map(Math.log);
  const mean = (v: readonly number[]): number => v.reduce((sum, each) => sum + each, 0) / v.length;
  const [mx, my] = [mean(x), mean(y)];
  const spread = x.reduce((sum, each) => sum + (each - mx) ** 2, 0);
  return x.reduce((sum, each, i) => sum + (each - mx) * (y[i] - my), 0) / spread;
}
