import type { Run } from '../run/run.js';
import { trueValue } from '../run/test-kit.js';
import type { Measurable } from '../scenario/scenario.js';

/** What is looked for in a run: a quantity in a vessel at a time, d. */
export interface Sought {
  readonly reads: Measurable;
  readonly cell: number;
  readonly time: number;
}

/**
 * What truly stands in a run, on the straight line between its outputs; undefined where the run broke off or a
 * value is not finite. The run must reach every time.
 */
export function predictionsOf(run: Run, sought: readonly Sought[]): Float64Array | undefined {
  if (run.outcome.kind !== 'done') return undefined;
  const { model, samples } = run;
  const step = samples[1].time - samples[0].time;
  const at = (sample: number, { reads, cell }: Sought): number =>
    trueValue(reads, { model, ...samples[sample] }, cell);
  const values = Float64Array.from(sought, (each) => {
    const before = Math.min(Math.floor(each.time / step), samples.length - 1);
    const rest = each.time - samples[before].time;
    if (rest <= 0) return at(before, each);
    const after = Math.min(before + 1, samples.length - 1);
    const share = rest / (samples[after].time - samples[before].time);
    return at(before, each) * (1 - share) + at(after, each) * share;
  });
  return values.every(Number.isFinite) ? values : undefined;
}
