import { availableParallelism } from 'node:os';
import { fitBy, openFitRuns, type Fit, type FitRun, type FitRunValues, type FitSearch } from '@leat/core';
import { openCrew, type Crew } from '@leat/core/workers';
import { openCountProgress } from '../../terminal/progress.js';
import { interruptible } from '../../workers/interruptible.js';
import { threads } from '../../workers/pool.js';
import { job, type FitShared } from './job.js';

/** ms that a warm run takes before more threads are worth their start, and runs until one is warm. */
const worthIt = { least: 60, warm: 3 } as const;

/** Makes the runs of a fit: on this thread while they are short, then on a worker for each core. */
function openRuns(request: FitSearch, shared: FitShared, signal: AbortSignal, made: () => void) {
  const here = openFitRuns(request);
  const cores = availableParallelism();
  // Functions of a user's own cannot be sent to a worker.
  const alone = cores < 2 || shared.options.extend !== undefined;
  let crew: Crew<FitRun, Float64Array | null> | undefined;
  let count = 0;
  return {
    async make(runs: readonly FitRun[]): Promise<readonly FitRunValues[]> {
      const values: FitRunValues[] = [];
      while (crew === undefined && values.length < runs.length) {
        const began = performance.now();
        values.push(here(runs[values.length]));
        made();
        if (!alone && ++count > worthIt.warm && performance.now() - began > worthIt.least)
          crew = openCrew(threads({}), { module: job.module, shared }, { workers: cores, signal });
        // A breath, so that Ctrl-C is heard.
        await new Promise((resolve) => setImmediate(resolve));
        signal.throwIfAborted();
      }
      const rest = runs.slice(values.length);
      const found = (await crew?.do(rest)) ?? [];
      rest.forEach(made);
      return [...values, ...found.map((each) => each ?? undefined)];
    },
    close: async () => crew?.close(),
  };
}

/** Fits on every core, with how many runs are made; the same to the last byte as on one. */
export async function fitOnCores(request: FitSearch, shared: FitShared): Promise<Fit> {
  const progress = await openCountProgress('runs');
  let count = 0;
  try {
    return await interruptible(async (signal) => {
      const runs = openRuns(request, shared, signal, () => {
        progress.day(++count);
      });
      try {
        return await fitBy(request, (wanted) => runs.make(wanted));
      } finally {
        await runs.close();
      }
    });
  } finally {
    progress.end();
  }
}
