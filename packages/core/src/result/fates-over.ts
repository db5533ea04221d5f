import type { Run } from '../run/run.js';
import { budgetOf } from './budget.js';
import { fatesOf } from './fates.js';

/** Where a quantity had gone by each of some times, in the unit of its budget. */
export interface FatesOver {
  /** d. */
  readonly time: readonly number[];
  /** Names as in `fatesOf(...).to`, the largest at the end first; one of the `amounts` for each time. */
  readonly parts: readonly { readonly name: string; readonly amounts: readonly number[] }[];
}

/** Indices of at most `most` samples, evenly over the run, the first and the last among them. */
function spread(count: number, most: number): number[] {
  const steps = Math.min(count, most) - 1;
  if (steps < 1) return [count - 1];
  return [...new Set(Array.from({ length: steps + 1 }, (_, i) => Math.round((i * (count - 1)) / steps)))];
}

/**
 * Where nitrogen (g N) or water (m3) had gone by each time of a run: the fates of the run up to there, over the
 * whole system. At the start all is 0.
 * @param most most times, at least 2; the first and last output times are always among them
 */
export function fatesOver(run: Run, quantity: 'nitrogen' | 'water', most: number): FatesOver {
  const at = spread(run.samples.length, most);
  const fates = at.map((index) =>
    fatesOf(budgetOf({ ...run, samples: run.samples.slice(0, index + 1) }, quantity, 'system')),
  );
  const amounts = (name: string): number[] =>
    fates.map(({ to }) => to.find((share) => share.name === name)?.amount ?? 0);
  const names = [...new Set([...fates].reverse().flatMap(({ to }) => to.map(({ name }) => name)))];
  return {
    time: at.map((index) => run.samples[index].time),
    parts: names.map((name) => ({ name, amounts: amounts(name) })),
  };
}
