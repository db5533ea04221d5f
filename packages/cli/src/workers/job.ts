/** An opened job. What goes in and comes out is plain data (structured clone). */
interface JobRunner<Input, Output> {
  run(input: Input): Output;
}

/** Work that can be done in a worker: opened once with what all inputs share, then run for each input. */
export interface Job<Shared, Input, Output> {
  open(shared: Shared): JobRunner<Input, Output>;
}
