import type { IntegratorFactory } from './contract.js';
import type { LinearSolverFactory } from './contract.js';
/** As `rosenbrock`, with the linear solver chosen by the caller. */
export declare function rosenbrockWith(makeSolver: LinearSolverFactory): IntegratorFactory;
/**
 * The stiff integrator: RODAS of order 4(3) with exact Jacobian, error control by step size, and dense
 * output of order 3. `maxSteps` bounds the tries in one segment (100,000 unless said otherwise).
 */
export declare const rosenbrock: IntegratorFactory;
//# sourceMappingURL=rosenbrock.d.ts.map