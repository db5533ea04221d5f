import type { Checkpoint } from '../files/checkpoint.js';
import { openRunsProgress } from '../terminal/progress.js';
import type { Job } from './job.js';
import { eachJob, type JobsOptions } from './pool.js';

/** One part of work with a checkpoint: its name, and what is shown of it. */
interface Part {
  readonly part: string;
  readonly shown: string;
}

/**
 * Does those jobs of a part that were not done before, keeps each output as it comes, and gives them all in the
 * order of the inputs. Rejects as `eachJob` does; what was done by then is in the checkpoint.
 */
export async function runWithCheckpoint<Shared, Input, Output>(
  job: Job<Shared, Input, Output>,
  shared: Shared,
  inputs: readonly Input[],
  checkpoint: Checkpoint<Output>,
  { part, shown }: Part,
  options: JobsOptions,
): Promise<readonly Output[]> {
  const todo = [...inputs.keys()].filter((index) => checkpoint.get(part, index) === undefined);
  let done = inputs.length - todo.length;
  const progress = await openRunsProgress(shown, inputs.length, done);
  try {
    await eachJob(
      job,
      shared,
      todo.map((index) => inputs[index]),
      (place, output) => {
        checkpoint.put(part, todo[place], output);
        progress.day(++done);
      },
      options,
    );
  } finally {
    progress.end();
  }
  return inputs.flatMap((_, index) => checkpoint.get(part, index) ?? []);
}
