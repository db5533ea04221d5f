import { openFitRuns, type FitRun } from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openFitRequest, type LoggedOptions } from '../shared/fit-request.js';

/** What the runs of a fit are opened with. */
export interface FitShared {
  readonly file: string;
  readonly options: LoggedOptions;
  readonly free: readonly string[];
}

/** Makes runs of a fit, apart from it. What breaks off is null. */
export const job: Job<FitShared, FitRun, Float64Array | null> = {
  module: import.meta.url,
  async open({ file, options, free }) {
    const run = openFitRuns(await openFitRequest(file, options, free));
    return { run: (input) => run(input) ?? null };
  },
};
