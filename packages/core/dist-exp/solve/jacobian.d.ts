import type { RateSystem } from './contract.js';
import type { LinearSolver, LinearSolverFactory } from './contract.js';
/**
 * The matrix W = I/(hγ) − J of a rate system, with J = Sᵀ ∂r/∂y summed from the partials of the rates
 * straight into the places of the linear solver. The right side is never differenced.
 */
export interface StepMatrix {
    readonly solver: LinearSolver;
    /** Sums −J from the partials `dr` (aligned with `dependence`). */
    assemble(dr: Float64Array): void;
    /** Factorises W for hγ given, with the last −J. False when it cannot. */
    factor(hGamma: number): boolean;
}
/** Finds the places of J once and makes the linear solver for them. */
export declare function stepMatrix(system: RateSystem, makeSolver: LinearSolverFactory): StepMatrix;
//# sourceMappingURL=jacobian.d.ts.map