import type { LinearSolver, SparsePattern } from './contract.js';
/** Makes a sparse LU solver: the ordering and the places of the fill are found once for a pattern. */
export declare function sparseLu(pattern: SparsePattern): LinearSolver;
//# sourceMappingURL=sparse-lu.d.ts.map