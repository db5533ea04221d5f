import type { InputOf, JobKind, OutputOf, SharedOf } from './job-kinds.js';
import { eachJob } from './pool.js';
import type { JobsOptions } from './pool.js';
import { openRunsProgress } from '../terminal/progress.js';
import type { Checkpoint } from '../files/checkpoint.js';

/** One part of work that is kept: its name, and what is shown of it. */
interface Part {
  readonly part: string;
  readonly shown: string;
}

/**
 * Does those jobs of a part that were not done before, keeps each output as it comes, and gives them all in the
 * order of the inputs. Rejects as `eachJob` does; what was done by then is in the work.
 */
export async function runWithCheckpoint<Kind extends JobKind>(
  kind: Kind,
  shared: SharedOf<Kind>,
  inputs: readonly InputOf<Kind>[],
  work: Checkpoint<OutputOf<Kind>>,
  { part, shown }: Part,
  options: JobsOptions,
): Promise<readonly OutputOf<Kind>[]> {
  const todo = [...inputs.keys()].filter((index) => work.get(part, index) === undefined);
  let done = inputs.length - todo.length;
  const progress = await openRunsProgress(shown, inputs.length, done);
  try {
    await eachJob(
      kind,
      shared,
      todo.map((index) => inputs[index]),
      (place, output) => {
        work.put(part, todo[place], output);
        progress.day(++done);
      },
      options,
    );
  } finally {
    progress.end();
  }
  return inputs.flatMap((_, index) => work.get(part, index) ?? []);
}
