import { availableParallelism } from 'node:os';
import {
  eachJob as eachOnWorkers,
  runJobs as runOnWorkers,
  type JobsOptions as PoolOptions,
} from '@leat/core/workers';
import { withoutCode } from '../files/extension.js';
import type { Streams } from '../terminal/streams.js';
import type { Job } from './job.js';
import { keptThreads } from './kept-threads.js';

/** How jobs are run: by default on one worker for each core. */
export interface JobsOptions extends PoolOptions {
  /** Heap of a worker, MB; a job that needs more ends as a worker that died. Default 1024. */
  readonly heapMegabytes?: number;
}

/**
 * MB. The old part is far above what a run needs. A small young part is swept more often: less memory, more time. 1,000 members of a
 * year by two workers: 6 takes 242 MB and 123 s of processor time, 12 takes 253 MB and 111 s, 24 takes 274 MB and 111 s.
 */
const heap = { young: 12, old: 1024 };

const entry = new URL('./worker.js', import.meta.url);

/** Starts threads that load the job which they are opened with, or goes on with those whose work is done. */
export const threads = (
  { heapMegabytes = heap.old }: JobsOptions,
  program = entry,
): ReturnType<typeof keptThreads> => keptThreads({ program, young: heap.young, old: heapMegabytes });

const onEveryCore = <Options extends JobsOptions>(options: Options): Options => ({
  workers: availableParallelism(),
  ...options,
});

/** Notes each worker that hangs and is replaced. */
export const noteReplaced = (streams: Pick<Streams, 'note'>): Required<Pick<JobsOptions, 'onReplaced'>> => ({
  onReplaced: (input) => {
    streams.note(`a worker said nothing for long at job ${input + 1}: it was ended, another does it once more
`);
  },
});

/** Does a job for each input on the workers and hands over each output as it comes: see `eachJob` of `@leat/core/workers`. */
export async function eachJob<Shared, Input, Output>(
  { module }: Job<Shared, Input, Output>,
  shared: Shared,
  inputs: readonly Input[],
  done: (index: number, output: Output) => void,
  options: JobsOptions = {},
): Promise<void> {
  await eachOnWorkers<Input, Output>(
    threads(options),
    { module, shared: withoutCode(shared) },
    inputs,
    done,
    onEveryCore(options),
  );
}

/** Does a job for each input, as `eachJob`, and gives the outputs in the order of the inputs. */
export async function runJobs<Shared, Input, Output>(
  { module }: Job<Shared, Input, Output>,
  shared: Shared,
  inputs: readonly Input[],
  options: JobsOptions & { readonly onDone?: (index: number, output: Output) => void } = {},
): Promise<Output[]> {
  return runOnWorkers<Input, Output>(
    threads(options),
    { module, shared: withoutCode(shared) },
    inputs,
    onEveryCore(options),
  );
}

/**
 * Does a job for one input on every worker that the work to come will have, and gives what it gives: all of them are warm
 * then, where one alone would be and the others idle.
 * @param wanted how many pieces of work are to come
 */
export async function runOnEach<Shared, Input, Output>(
  job: Job<Shared, Input, Output>,
  shared: Shared,
  input: Input,
  wanted: number,
  options: JobsOptions = {},
): Promise<Output> {
  const { workers = availableParallelism() } = options;
  const inputs = Array.from({ length: Math.max(1, Math.min(workers, wanted)) }, () => input);
  const [output] = await runJobs(job, shared, inputs, options);
  return output;
}
