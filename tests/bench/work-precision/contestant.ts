/** One run of a year: how long it took and where it came out. */
export interface Measurement {
  readonly tolerance: number;
  /** Warm times of the processor, ms. */
  readonly milliseconds: readonly number[];
  /** State at the end of each day, day after day. */
  readonly days: Float64Array;
  readonly work: Readonly<Record<string, number>>;
}

/** One way to integrate the year. */
export interface Contestant {
  /** Such as `CVODE KLU`; its variants share it. */
  readonly name: string;
  /** How changes of forcing are met. */
  readonly forcing: string;
  /** Jacobian, linear algebra, what is run. */
  readonly given: string;
  readonly tolerances: readonly number[];
  /** Whether it takes so long that one round is enough. */
  readonly slow: boolean;
  measure(tolerance: number): Measurement;
}
