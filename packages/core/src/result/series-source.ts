import type { Sample } from '../run/run.js';

/** How the values of one series are read from the samples of a run. */
export interface SeriesSource {
  readonly name: string;
  readonly unit: string;
  /** Value at a sample and its index among the samples. */
  value(sample: Sample, index: number): number;
}
