/** An opened job. What goes in and comes out is plain data (structured clone). */
interface JobRunner<Input, Output> {
  /** @param alive says that the job is still at work; a worker that says nothing for long is taken to hang */
  run(input: Input, alive: () => void): Output;
}

/** Work that can be done in a worker: opened once with what all inputs share, then run for each input. */
export interface Job<Shared, Input, Output> {
  /** Address of the module that exports it as `job`: a worker loads it from there. */
  readonly module: string;
  open(shared: Shared): JobRunner<Input, Output> | Promise<JobRunner<Input, Output>>;
}

/** What a worker is opened with. */
export interface WorkerStart {
  /** Address of the module of its job. */
  readonly module: string;
  readonly shared: unknown;
}
