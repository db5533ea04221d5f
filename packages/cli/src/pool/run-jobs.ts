import { eachTask, type JobsOptions } from './each-task.js';
import type { InputOf, JobKind, OutputOf, SharedOf } from './job-kinds.js';

/** Does one job of a kind for each input on the workers and hands over each output as it comes: see `eachTask`. */
export async function eachJob<Kind extends JobKind>(
  kind: Kind,
  shared: SharedOf<Kind>,
  inputs: readonly InputOf<Kind>[],
  done: (index: number, output: OutputOf<Kind>) => void,
  options: JobsOptions = {},
): Promise<void> {
  const entry = new URL('./worker.js', import.meta.url);
  await eachTask(
    entry,
    { kind, shared },
    inputs,
    (index, output) => {
      done(index, output as OutputOf<Kind>);
    },
    options,
  );
}

/** Does one job for each input, as `eachJob`, and gives the outputs in the order of the inputs. */
export async function runJobs<Kind extends JobKind>(
  kind: Kind,
  shared: SharedOf<Kind>,
  inputs: readonly InputOf<Kind>[],
  options: JobsOptions & { readonly onDone?: (index: number, output: OutputOf<Kind>) => void } = {},
): Promise<OutputOf<Kind>[]> {
  const outputs = new Array<OutputOf<Kind>>(inputs.length);
  await eachJob(
    kind,
    shared,
    inputs,
    (index, output) => {
      outputs[index] = output;
      options.onDone?.(index, output);
    },
    options,
  );
  return outputs;
}
