import type { Proposal } from '@leat/core';
import { type AdviseInput, type AdviseShared, openAdviceTrials } from '@leat/core/tasks';
import type { Job } from '../../workers/job.js';

/** Finds the least of one change, or of two together, that is enough; null where they make no system. */
export const job: Job<AdviseShared, AdviseInput, Proposal | null> = {
  module: import.meta.url,
  open: (shared) => ({ run: openAdviceTrials(shared) }),
};
