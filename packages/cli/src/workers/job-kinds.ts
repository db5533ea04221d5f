import type { Job } from './job.js';

/** Every kind of job, loaded by the worker that does it. One line for each; see `jobs/`. */
const kinds = {
  outline: async () => (await import('../commands/ensemble/outline-job.js')).outlineJob,
  answer: async () => (await import('../commands/sensitivity/job.js')).answerJob,
  member: async () => (await import('../commands/ensemble/member-job.js')).memberJob,
  sweep: async () => (await import('../commands/sweep/job.js')).sweepJob,
  size: async () => (await import('../commands/size/job.js')).sizeJob,
};

/** Name of a kind of job. */
export type JobKind = keyof typeof kinds;

type JobOf<Kind extends JobKind> = Awaited<ReturnType<(typeof kinds)[Kind]>>;

type RunOf<Kind extends JobKind> = ReturnType<JobOf<Kind>['open']>['run'];

/** What all inputs of a kind of job share. */
export type SharedOf<Kind extends JobKind> = Parameters<JobOf<Kind>['open']>[0];

/** One input of a kind of job. */
export type InputOf<Kind extends JobKind> = Parameters<RunOf<Kind>>[0];

/** What a kind of job gives for one input. */
export type OutputOf<Kind extends JobKind> = ReturnType<RunOf<Kind>>;

/** Loads a job by its kind. */
export async function loadJob(kind: JobKind): Promise<Job<unknown, unknown, unknown>> {
  return kinds[kind]();
}
