/** An opened job. What goes in and comes out is plain data (structured clone). */
interface JobRunner<Input, Output> {
  run(input: Input): Output;
}

/** Work that can be done in a worker: opened once with what all inputs share, then run for each input. */
export interface Job<Shared, Input, Output> {
  /** Address of the module that exports it as `job`: a worker loads it from there. */
  readonly module: string;
  open(shared: Shared): JobRunner<Input, Output>;
}

/** What a worker is started with. */
export interface WorkerStart {
  /** Address of the module of its job. */
  readonly module: string;
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
