import type { JobKind } from './job-kinds.js';

/** What a worker is started with. */
export interface WorkerStart {
  readonly kind: JobKind;
  readonly shared: unknown;
}

/** What a worker is told to do. */
export interface WorkerTask {
  readonly index: number;
  readonly input: unknown;
}

/** What a worker answers: an output, or the error that came instead. */
export type WorkerAnswer =
  | { readonly index: number; readonly output: unknown }
  | {
      readonly index: number;
      readonly error: { readonly name: string; readonly message: string; readonly stack: string };
    };
