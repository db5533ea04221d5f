import type { Run, Sample } from '../run/run.js';

const known = new WeakMap<Run, Run>();

/** A run whose samples are those at the output times and those between them, ascending; the run itself where there are none. */
export function closeRun(run: Run): Run {
  const { samples, between = [] } = run;
  if (between.length === 0) return run;
  const found = known.get(run);
  if (found !== undefined) return found;
  const all: Sample[] = [...samples, ...between].sort((a, b) => a.time - b.time);
  const close = { ...run, samples: all };
  known.set(run, close);
  return close;
}
