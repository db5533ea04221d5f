import { InputError } from '../base/faults.js';
import {
  hear,
  hearDeath,
  isTold,
  type JobWorker,
  type SentError,
  type StopSignal,
  type ToWorker,
} from './protocol.js';

/** How jobs are done. */
export interface JobsOptions {
  /** Workers at work at once; default 2. Never more than there are inputs. */
  readonly workers?: number;
  /** Ends the work: what is under way is dropped and the promise rejects with the reason of the signal. */
  readonly signal?: StopSignal;
  /**
   * How long, s, a worker may say nothing while it does an input before it is taken to hang; default 1800. It is then ended
   * and replaced, and its input is done once more; where it hangs again the work ends with an error that names the input.
   */
  readonly patience?: number;
  /** Told of a worker that was taken to hang and was replaced: the place of its `input` among the inputs, from 0. */
  readonly onReplaced?: (input: number) => void;
}

/** A worker that ended without being told to, such as one that ran out of memory. */
export class WorkerDiedError extends Error {
  override readonly name = 'WorkerDiedError';
}

/** A worker that said nothing for longer than it may, twice at one input. */
export class WorkerHungError extends Error {
  override readonly name = 'WorkerHungError';
}

// What Node and every browser have, and the language has not.
declare const setTimeout: (call: () => void, after: number) => unknown;
declare const clearTimeout: (timer: unknown) => void;

/** s. */
const usualPatience = 1800;
/** Workers where none are asked for. */
export const usualWorkers = 2;

/** An error as it was thrown in a worker. */
export function errorFrom({ name, message, stack, faults }: SentError): Error {
  if (faults !== undefined) return Object.assign(new InputError(faults), { stack });
  return Object.assign(new Error(message), { name, stack });
}

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

/** The work under way: who does what, what is left, and how it ends. */
class Pool<Input> {
  private readonly workers = new Set<JobWorker>();
  private readonly timers = new Set<unknown>();
  /** Inputs that a worker hung at, by their place. */
  private readonly hung = new Set<number>();
  /** Inputs to be done once more, before those that were never given. */
  private readonly again: number[] = [];
  private next = 0;
  private left: number;

  constructor(
    private readonly start: () => JobWorker,
    private readonly shared: unknown,
    private readonly inputs: readonly Input[],
    private readonly done: (index: number, output: unknown) => void,
    private readonly options: JobsOptions,
    private readonly end: { readonly resolve: () => void; readonly reject: (error: Error) => void },
  ) {
    this.left = inputs.length;
  }

  /** Starts a worker and gives it its first input. */
  begin(): void {
    const { start, inputs, end } = this;
    const worker = start();
    this.workers.add(worker);
    let under = -1;
    let timer: unknown;
    const quiet = (): void => {
      clearTimeout(timer);
      this.timers.delete(timer);
    };
    const wait = (): void => {
      quiet();
      timer = setTimeout(
        () => {
          this.replace(worker, under);
        },
        1000 * (this.options.patience ?? usualPatience),
      );
      this.timers.add(timer);
    };
    const give = (): void => {
      under = this.again.shift() ?? (this.next < inputs.length ? this.next++ : -1);
      if (under < 0) {
        quiet();
        return;
      }
      worker.postMessage({ leat: 'do', index: under, input: inputs[under] } satisfies ToWorker);
      wait();
    };
    hear(worker, (message) => {
      if (!this.workers.has(worker) || !isTold(message)) return;
      if (message.leat === 'failed') end.reject(errorFrom(message.error));
      else if (message.leat === 'alive') wait();
      else if (message.leat === 'done') {
        // First, so that the worker is at work while its output is taken in.
        give();
        this.take(message.index, message.output);
      }
    });
    hearDeath(worker, (reason) => {
      if (!this.workers.has(worker)) return;
      const at = under < 0 ? '' : ` while it did job ${under + 1} of ${inputs.length}`;
      end.reject(new WorkerDiedError(`a worker died${at}: ${reason}`));
    });
    worker.postMessage({ leat: 'open', shared: this.shared } satisfies ToWorker);
    give();
  }

  private take(index: number, output: unknown): void {
    try {
      this.done(index, output);
    } catch (error) {
      this.end.reject(asError(error));
      return;
    }
    if (--this.left === 0) this.end.resolve();
  }

  /** Ends a worker that hangs; another does its input, once more. */
  private replace(worker: JobWorker, index: number): void {
    const { hung, inputs, options, end } = this;
    this.workers.delete(worker);
    void worker.terminate();
    if (hung.has(index)) {
      const seconds = options.patience ?? usualPatience;
      end.reject(
        new WorkerHungError(
          `job ${index + 1} of ${inputs.length} hangs: two workers said nothing for ${seconds} s at it`,
        ),
      );
      return;
    }
    hung.add(index);
    this.again.push(index);
    options.onReplaced?.(index);
    try {
      this.begin();
    } catch (error) {
      end.reject(asError(error));
    }
  }

  /** Ends every worker; resolves when they have ended. */
  async close(): Promise<void> {
    const ending = [...this.workers];
    this.workers.clear();
    for (const timer of this.timers) clearTimeout(timer);
    await Promise.all(ending.map((worker) => worker.terminate()));
  }
}

/**
 * Does a job for each input, on several workers, and hands over each output as it comes (in any order). One input at a time
 * is given to a worker, so that what is under way stays small. The first error of a job ends all, an `InputError` with its
 * faults; a worker that dies is an error that names the input; one that hangs is replaced. Rejects with the same.
 *
 * @param start makes a worker, whose program calls `serveJobs`: `() => new Worker(new URL('./job.js', import.meta.url))`
 * @param shared what all inputs share, in plain data
 * @param done called for each output with the place of its input, `index`, from 0
 */
// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters -- what crosses between threads, the caller says
export async function eachJob<Input, Output>(
  start: () => JobWorker,
  shared: unknown,
  inputs: readonly Input[],
  done: (index: number, output: Output) => void,
  options: JobsOptions = {},
): Promise<void> {
  const { workers = usualWorkers, signal } = options;
  signal?.throwIfAborted();
  if (inputs.length === 0) return;
  const atWork = Math.min(workers, inputs.length);
  if (!(atWork >= 1)) throw new RangeError(`${workers} workers do nothing: at least one is needed`);
  let pool: Pool<Input> | undefined;
  let stop = (): void => undefined;
  try {
    await new Promise<void>((resolve, reject) => {
      stop = () => {
        reject(signal?.reason instanceof Error ? signal.reason : new Error('stopped'));
      };
      signal?.addEventListener('abort', stop);
      const taken = (index: number, output: unknown): void => {
        if (signal?.aborted !== true) done(index, output as Output);
      };
      pool = new Pool(start, shared, inputs, taken, options, { resolve, reject });
      for (let i = 0; i < atWork; i++) pool.begin();
    });
  } finally {
    signal?.removeEventListener('abort', stop);
    await pool?.close();
  }
}

/**
 * Does a job for each input, as `eachJob`, and gives the outputs in the order of the inputs.
 *
 * @param options of `eachJob`, and what is told of each output as it comes, with the place of its input, `index`, from 0
 */
// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters -- what crosses between threads, the caller says
export async function runJobs<Input, Output>(
  start: () => JobWorker,
  shared: unknown,
  inputs: readonly Input[],
  options: JobsOptions & { readonly onDone?: (index: number, output: Output) => void } = {},
): Promise<Output[]> {
  const outputs = new Array<Output>(inputs.length);
  await eachJob<Input, Output>(
    start,
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
