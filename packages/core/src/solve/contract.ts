/**
 * The contract between a model and an integrator. Nothing here knows what is modelled: there are
 * states y, rates r, a constant sparse stoichiometry S, and
 *
 *     y' = Sᵀ r(t, y)        x' = r(t, y)
 *
 * where x, the extents, is what each rate has amounted to since the start. Because J = Sᵀ ∂r/∂y is
 * built from the same S, every linear invariant of S (nitrogen, charge ...) survives each step.
 */

import type { Room } from './room.js';

/**
 * Rows of (column, value) pairs in compressed form: row i holds entries `start`[i] .. `start`[i+1]-1 of `column` and
 * `value`.
 */
export interface SparseRows {
  readonly start: Int32Array;
  readonly column: Int32Array;
  readonly value: Float64Array;
}

/** The places of a sparse matrix without its values: `start` and `column` as in {@link SparseRows}. */
export interface SparsePattern {
  readonly start: Int32Array;
  readonly column: Int32Array;
}

/** A system of rates. All arrays are owned by the caller; the functions only fill them. */
export interface RateSystem {
  /** Number of states (length of y). */
  readonly states: number;
  /** Number of rates (length of r and of the extents x). */
  readonly rates: number;
  /** One row per rate: which states it moves, by how much per unit of rate. */
  readonly stoichiometry: SparseRows;
  /** One row per rate: the states on which its value depends. */
  readonly dependence: SparsePattern;
  /** Fills r with the rates at (t, y). */
  evaluate(t: number, y: Float64Array, r: Float64Array): void;
  /**
   * Fills dr with ∂r/∂y, aligned entry by entry with `dependence`, and rt with ∂r/∂t at constant y.
   * Both are written in full.
   */
  differentiate(t: number, y: Float64Array, dr: Float64Array, rt: Float64Array): void;
  /** Both at once, where that saves work: fills r, dr and rt. */
  linearise?(t: number, y: Float64Array, r: Float64Array, dr: Float64Array, rt: Float64Array): void;
}

/**
 * Counts of the work an integrator did: `steps` taken, steps `rejected`, short stretches `passed` without one, `evaluations` of the rates, `jacobians`,
 * `factorisations` of the matrix and `solves` with it.
 */
export interface WorkCounts {
  steps: number;
  rejected: number;
  passed: number;
  evaluations: number;
  jacobians: number;
  factorisations: number;
  solves: number;
}

/** How an integration ended. Every ending but `done` names the time and the worst state. */
export type Ending =
  | { readonly kind: 'done' }
  | {
      readonly kind: 'step-too-small' | 'too-many-steps' | 'not-finite' | 'singular';
      /** Time reached; y and x hold the values there. */
      readonly time: number;
      /** Index of the state that limited the step, or -1 when none can be named. */
      readonly worst: number;
    };

/** Accuracy asked of an integrator. */
export interface Tolerance {
  /** Relative tolerance, above 0. */
  readonly relative: number;
  /** Absolute tolerance of each state, same unit as the state. */
  readonly absolute: Float64Array;
}

/** Wanted values inside a segment, delivered by dense output, in ascending order of time. */
export interface OutputPlan {
  /** Times t with from < t < to. */
  readonly times: readonly number[];
  /** Called once for each time with views that are only valid during the call. */
  take(time: number, y: Float64Array, x: Float64Array): void;
}

/** What an integrator remembers from one segment to the next. Plain data. */
export interface StepMemory {
  /** The step that accuracy asks for; undefined: none is known yet. */
  natural: number | undefined;
  /** The step that was right at the beginning of the last segment, where the natural one has been too long. */
  opening: number;
  /** Whether the natural step was refused at the beginning of the last segment. */
  refusedBefore: boolean;
}

/**
 * An integrator bound to one system. `advance` moves y and x in place from `from` to `to`; nothing
 * jumps inside the segment. The step size found is kept for the next segment; `restart` forgets it.
 */
export interface Integrator {
  readonly name: string;
  readonly work: WorkCounts;
  /** All that it remembers, changed in place by it and, between segments, by whoever sets it; absent: it remembers nothing. */
  readonly memory?: StepMemory;
  /** Goes from one time to another, d; tells how that ended. */
  advance(from: number, to: number, y: Float64Array, x: Float64Array, outputs?: OutputPlan): Ending;
  /** Forgets the step: something has jumped. */
  restart(): void;
}

/**
 * Makes an integrator for a system, of at most `maxSteps` steps in a segment, the first of `firstStep` d. Throws RangeError
 * when a tolerance is not above 0.
 */
export type IntegratorFactory = (
  system: RateSystem,
  tolerance: Tolerance,
  options?: { readonly maxSteps?: number; readonly firstStep?: number },
) => Integrator;

/** Nothing remembered yet. */
export function noMemory(): StepMemory {
  return { natural: undefined, opening: Infinity, refusedBefore: false };
}

/** Work counts at zero. */
export function noWork(): WorkCounts {
  return { steps: 0, rejected: 0, passed: 0, evaluations: 0, jacobians: 0, factorisations: 0, solves: 0 };
}

/** A square linear system whose places are known beforehand and whose values change. */
export interface LinearSolver {
  /** How many values it has. */
  readonly entries: number;
  /** The values, at the indices that `place` gives. `factor` overwrites them. */
  readonly values: Float64Array;
  /** Row at which the last `factor` failed, or -1. */
  readonly failedRow: number;
  /** Index into `values` of the entry (row, column). Throws RangeError when the pattern lacks it. */
  place(row: number, column: number): number;
  /** Factorises. False when a pivot is zero, lost in round-off or not finite. */
  factor(): boolean;
  /** Replaces b by the solution, with the last factors. */
  solve(b: Float64Array): void;
}

/**
 * Makes a solver for a square pattern (one row for each `start` but the last); it adds the diagonal. The `room` is where its arrays
 * may lie beside those of the integrator; its values may be asked for once all arrays of the room are laid out.
 */
export type LinearSolverFactory = (pattern: SparsePattern, room?: Room) => LinearSolver;
