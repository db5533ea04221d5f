import { InputError } from '../base/faults.js';
import { hear, isTold, type FromWorker, type JobPort, type SentError } from './protocol.js';

/**
 * Does a job for one input. What goes in and comes out is plain data (structured clone). It may call `alive` while it is at
 * work, as often as it likes: a worker that says nothing for long is taken to hang.
 */
export type DoJob<Input, Output> = (input: Input, alive: () => void) => Output | Promise<Output>;

function sent(error: unknown): SentError {
  const { name, message, stack = '' } = error instanceof Error ? error : new Error(String(error));
  return { name, message, stack, ...(error instanceof InputError && { faults: error.faults }) };
}

/**
 * The worker's side of the pool: it is opened once with what all inputs share, then does each input that it is given. What
 * is thrown goes back as an error, the faults of an `InputError` with it; the worker lives on.
 *
 * @param port `parentPort` of `node:worker_threads`, or `self` of a worker of a page
 * @param open makes what does the jobs from what they share
 */
// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters -- what crosses between threads, the caller says
export function serveJobs<Shared, Input, Output>(
  port: JobPort,
  open: (shared: Shared) => DoJob<Input, Output> | Promise<DoJob<Input, Output>>,
): void {
  let opened: Promise<DoJob<Input, Output>> | undefined;
  const tell = (message: FromWorker): void => {
    port.postMessage(message);
  };
  const work = async (index: number, input: Input): Promise<void> => {
    try {
      if (opened === undefined) throw new Error('a worker was given an input before it was opened');
      const job = await opened;
      const output = await job(input, () => {
        tell({ leat: 'alive', index });
      });
      tell({ leat: 'done', index, output });
    } catch (error) {
      tell({ leat: 'failed', index, error: sent(error) });
    }
  };
  hear(port, (message) => {
    if (!isTold(message)) return;
    if (message.leat === 'open') {
      opened = Promise.resolve(message.shared as Shared).then(open);
      // Told with the first input, which waits for it.
      opened.catch(() => undefined);
    } else if (message.leat === 'do') void work(message.index, message.input as Input);
  });
}
