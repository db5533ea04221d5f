import type { Fault } from '../base/faults.js';

/** What the pool tells a worker. Each message has its kind under `leat`: others on the same port are left alone. */
export type ToWorker =
  | { readonly leat: 'open'; readonly shared: unknown }
  | { readonly leat: 'do'; readonly index: number; readonly input: unknown };

/** An error as it crosses between threads: its class is lost on the way, its name, text and faults are kept. */
export interface SentError {
  readonly name: string;
  readonly message: string;
  readonly stack: string;
  /** Every fault of an `InputError`. */
  readonly faults?: readonly Fault[];
}

/** What a worker tells the pool: an output, the error that came instead, or that it is still at work. */
export type FromWorker =
  | { readonly leat: 'done'; readonly index: number; readonly output: unknown }
  | { readonly leat: 'failed'; readonly index: number; readonly error: SentError }
  | { readonly leat: 'alive'; readonly index: number };

/** Whether a message is of this protocol: it says its kind under `leat`. */
export const isTold = (message: unknown): message is ToWorker | FromWorker =>
  typeof message === 'object' && message !== null && 'leat' in message && typeof message.leat === 'string';

/** A thread of Node (`Worker` of `node:worker_threads`), as far as the pool needs it. */
export interface ThreadWorker {
  postMessage(message: unknown): void;
  on(event: 'message', take: (message: unknown) => void): unknown;
  on(event: 'error', take: (error: Error) => void): unknown;
  on(event: 'exit', take: (code: number) => void): unknown;
  terminate(): unknown;
}

/** A worker of a page (`Worker` of the browser), as far as the pool needs it. */
export interface PageWorker {
  postMessage(message: unknown): void;
  addEventListener(event: 'message', take: (event: { readonly data: unknown }) => void): void;
  addEventListener(
    event: 'error' | 'messageerror',
    take: (event: { readonly message?: string }) => void,
  ): void;
  terminate(): unknown;
}

/** A worker to do jobs, of Node or of a page. Whoever uses the pool makes it. */
export type JobWorker = ThreadWorker | PageWorker;

/** The port of a worker of Node (`parentPort`), seen from inside. */
export interface ThreadPort {
  postMessage(message: unknown): void;
  on(event: 'message', take: (message: unknown) => void): unknown;
}

/** The global of a worker of a page (`self`), seen from inside. */
export interface PagePort {
  postMessage(message: unknown): void;
  addEventListener(event: 'message', take: (event: { readonly data: unknown }) => void): void;
}

/** What a worker hears the pool by. */
export type JobPort = ThreadPort | PagePort;

/** Hears the messages of either kind of worker or port. */
export function hear(
  port: Pick<ThreadPort, 'on'> | Pick<PagePort, 'addEventListener'>,
  take: (message: unknown) => void,
): void {
  if ('addEventListener' in port) {
    port.addEventListener('message', ({ data }) => {
      take(data);
    });
  } else port.on('message', take);
}

/** Hears that a worker ended by itself or could not be started, in words. */
export function hearDeath(worker: JobWorker, take: (reason: string) => void): void {
  if ('addEventListener' in worker) {
    worker.addEventListener('error', ({ message }) => {
      take(message === undefined || message === '' ? 'its program could not be run' : message);
    });
    worker.addEventListener('messageerror', () => {
      take('what it said could not be read');
    });
    return;
  }
  worker.on('error', ({ message }) => {
    take(message);
  });
  worker.on('exit', (code) => {
    take(`it ended with code ${code}`);
  });
}

/** What ends work early, such as an `AbortSignal`, as far as the pool needs it. */
export interface StopSignal {
  readonly aborted: boolean;
  /** Why it was ended. */
  readonly reason: unknown;
  throwIfAborted(): void;
  addEventListener(event: 'abort', take: () => void): void;
  removeEventListener(event: 'abort', take: () => void): void;
}
