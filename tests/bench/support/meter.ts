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

/** Slope of log time over log size. */
export function exponent(sizes: readonly number[], times: readonly number[]): number {
  const x = sizes.map(Math.log);
  const y = times.map(Math.log);
  const mean = (v: readonly number[]): number => v.reduce((sum, each) => sum + each, 0) / v.length;
  const [mx, my] = [mean(x), mean(y)];
  const spread = x.reduce((sum, each) => sum + (each - mx) ** 2, 0);
  return x.reduce((sum, each, i) => sum + (each - mx) * (y[i] - my), 0) / spread;
}
