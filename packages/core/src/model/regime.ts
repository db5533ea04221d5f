import type { AcidBaseConstants } from '../chemistry/acid-base.js';

/**
 * What holds during a stretch of constant forcing: set by the driver before each stretch, read by the
 * rates. Volumes run on a straight line, because all flows are constant within a stretch.
 */
export interface Regime {
  /** Start of the stretch, d. */
  time: number;
  /** Volume of each vessel at that time, m3. */
  readonly volume: Float64Array;
  /** By how much it rises, m3 d-1. */
  readonly slope: Float64Array;
  /** Water in each stream, m3 d-1. */
  readonly flow: Float64Array;
  /** Concentrations of what a stream from outside brings: 8 for each stream. */
  readonly source: Float64Array;
  /** Acid-base constants of each vessel. */
  readonly constants: AcidBaseConstants[];
  /** Coefficients of each process instance: views into one array a process, to be filled in place. */
  readonly coefficients: readonly Float64Array[];
}
