import type { Fault } from '../base/faults.js';

/** Place of an input among all inputs. */
export interface OfInput {
  /** Place of the input, from 0. */
  readonly index: number;
}

/** The pool opens a worker with what all inputs share. */
export interface OpenMessage {
  readonly leat: 'open';
  readonly shared: unknown;
}

/** The pool gives a worker an input. */
export interface DoMessage extends OfInput {
  readonly leat: 'do';
  readonly input: unknown;
}

/** What the pool tells a worker. Each message has its kind under `leat`: others on the same port are left alone. */
export type ToWorker = OpenMessage | DoMessage;

/** An error as it crosses between threads: its class is lost on the way, its name, text and faults are kept. */
export interface SentError {
  readonly name: string;
  readonly message: string;
  readonly stack: string;
  /** Every fault of an `InputError`. */
  readonly faults?: readonly Fault[];
}

/** A worker has done an input. */
export interface DoneMessage extends OfInput {
  readonly leat: 'done';
  readonly output: unknown;
}

/** A worker could not do an input. */
export interface FailedMessage extends OfInput {
  readonly leat: 'failed';
  readonly error: SentError;
}

/** A worker is still at work on an input. */
export interface AliveMessage extends OfInput {
  readonly leat: 'alive';
}

/** What a worker tells the pool: an output, the error that came instead, or that it is still at work. */
export type FromWorker = DoneMessage | FailedMessage | AliveMessage;

/** Whether a message is of this protocol: it says its kind under `leat`. */
export const isTold = (message: unknown): message is ToWorker | FromWorker =>
  typeof message === 'object' && message !== null && 'leat' in message && typeof message.leat === 'string';

/** The port of a worker of Node (`parentPort`), seen from inside. */
export interface ThreadPort {
  /** Sends plain data to the other side. */
  postMessage(message: unknown): void;
  /** Hears what the other side sends. */
  on(event: 'message', take: (message: unknown) => void): unknown;
}

/** The global of a worker of a page (`self`), seen from inside. */
export interface PagePort {
  /** Sends plain data to the other side. */
  postMessage(message: unknown): void;
  /** Hears what the other side sends. */
  addEventListener(event: 'message', take: (event: { readonly data: unknown }) => void): void;
}

/** A thread of Node (`Worker` of `node:worker_threads`), as far as the pool needs it. */
export interface ThreadWorker extends ThreadPort {
  /** Hears what the worker sends. */
  on(event: 'message', take: (message: unknown) => void): unknown;
  /** Hears of an error that ended it. */
  on(event: 'error', take: (error: Error) => void): unknown;
  /** Hears that it ended, with its `code`. */
  on(event: 'exit', take: (code: number) => void): unknown;
  /** Ends it at once. */
  terminate(): unknown;
}

/** A worker of a page (`Worker` of the browser), as far as the pool needs it. */
export interface PageWorker extends PagePort {
  /** Hears what the worker sends. */
  addEventListener(event: 'message', take: (event: { readonly data: unknown }) => void): void;
  /** Hears of an error that ended it, or of a message that cannot be read. */
  addEventListener(
    event: 'error' | 'messageerror',
    take: (event: { readonly message?: string }) => void,
  ): void;
  /** Ends it at once. */
  terminate(): unknown;
}

/** A worker to do jobs, of Node or of a page. Whoever uses the pool makes it. */
export type JobWorker = ThreadWorker | PageWorker;

/** What a worker hears the pool by. */
export type JobPort = ThreadPort | PagePort;

/** Hears the messages of either kind of worker or port. */
export function hear(port: JobPort, take: (message: unknown) => void): void {
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
  /** Throws the reason where it was ended. */
  throwIfAborted(): void;
  /** Hears that it is ended. */
  addEventListener(event: 'abort', take: () => void): void;
  /** Hears it no more. */
  removeEventListener(event: 'abort', take: () => void): void;
}
