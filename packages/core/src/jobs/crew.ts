import { errorFrom, usualWorkers, WorkerDiedError } from './pool.js';
import { hear, hearDeath, isTold, type JobWorker, type StopSignal, type ToWorker } from './protocol.js';

/** Workers that stay, for work whose next inputs hang on earlier outputs. */
export interface Crew<Input, Output> {
  /** Does jobs side by side, one a worker at a time; outputs in the order of the inputs. One call at a time. Rejects with the first error of a job, and where a worker dies. */
  do(inputs: readonly Input[]): Promise<readonly Output[]>;
  /** Ends every worker; resolves when they have ended. */
  close(): Promise<void>;
}

/** What a crew is at. */
interface Round {
  readonly inputs: readonly unknown[];
  readonly outputs: unknown[];
  next: number;
  left: number;
  readonly resolve: (outputs: readonly never[]) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Opens workers that stay until they are sent away. Their program is that of the pool's (`serveJobs`).
 *
 * @param start makes a worker, whose program calls `serveJobs`
 * @param shared what all inputs share, in plain data
 */
export function openCrew<Input, Output>(
  start: () => JobWorker,
  shared: unknown,
  {
    workers = usualWorkers,
    signal,
  }: {
    /** How many; by default those that a machine is usually worth. */
    readonly workers?: number;
    readonly signal?: StopSignal | undefined;
  } = {},
): Crew<Input, Output> {
  signal?.throwIfAborted();
  let round: Round | undefined;
  let ill: Error | undefined;
  let closed = false;
  const fail = (error: Error): void => {
    ill ??= error;
    round?.reject(ill);
  };
  const give = (worker: JobWorker): void => {
    if (round === undefined || round.next >= round.inputs.length) return;
    const index = round.next++;
    worker.postMessage({ leat: 'do', index, input: round.inputs[index] } satisfies ToWorker);
  };
  const crew = Array.from({ length: workers }, start);
  for (const worker of crew) {
    hear(worker, (message) => {
      if (closed || !isTold(message)) return;
      if (message.leat === 'failed') fail(errorFrom(message.error));
      if (message.leat !== 'done' || round === undefined) return;
      round.outputs[message.index] = message.output;
      if (--round.left === 0) round.resolve(round.outputs as never[]);
      else give(worker);
    });
    hearDeath(worker, (reason) => {
      if (!closed) fail(new WorkerDiedError(`a worker died: ${reason}`));
    });
    worker.postMessage({ leat: 'open', shared } satisfies ToWorker);
  }
  const stop = (): void => {
    fail(signal?.reason instanceof Error ? signal.reason : new Error('stopped'));
  };
  signal?.addEventListener('abort', stop);
  return {
    do: (inputs) =>
      new Promise((resolve, reject) => {
        if (ill !== undefined) {
          reject(ill);
          return;
        }
        if (inputs.length === 0) {
          resolve([]);
          return;
        }
        const outputs = new Array<unknown>(inputs.length);
        round = { inputs, outputs, next: 0, left: inputs.length, resolve, reject };
        crew.forEach(give);
      }),
    async close() {
      closed = true;
      signal?.removeEventListener('abort', stop);
      await Promise.all(crew.map((worker) => worker.terminate()));
    },
  };
}
