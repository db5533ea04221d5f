import { openPlanTrials, type PlanInput, type PlanOutput, type PlanShared } from '@leat/core/tasks';
import type { Job } from '../../workers/job.js';

/** Runs a choice, or a draw of it. */
export const job: Job<PlanShared, PlanInput, PlanOutput> = {
  module: import.meta.url,
  open: (shared) => ({ run: openPlanTrials(shared) }),
};
