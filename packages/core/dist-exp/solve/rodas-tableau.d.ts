/**
 * RODAS: a Rosenbrock method of order 4 with an embedded solution of order 3, six stages, L-stable and
 * stiffly accurate, with dense output of order 3. Source [R]: Hairer & Wanner, Solving Ordinary
 * Differential Equations II, 2nd edition (Springer 1996), section VI.4, in the transformed form of
 * section IV.7, where stage i solves
 *
 *     (I/(hγ) − J) Uᵢ = f(t + αᵢh, y + Σ aᵢⱼUⱼ) + Σ cᵢⱼUⱼ/h + dᵢ h ∂f/∂t
 *
 * and the new solution is y + Σ mⱼUⱼ. The orders are tested in tests/numerics/order.
 */
export declare const STAGES = 6;
export declare const GAMMA = 0.25;
/** αᵢ: where in the step the right side of stage i is taken. */
export declare const ALPHA: readonly [0, 0.386, 0.21, 0.63, 1, 1];
/** dᵢ: the share of h ∂f/∂t that enters stage i. */
export declare const TIME_SHARE: readonly [0.25, -0.1043, 0.1035, -0.0362, 0, 0];
/** aᵢⱼ, one row a stage. */
export declare const A: readonly (readonly number[])[];
/**
 * First stage whose point is that of the stage before plus that stage: its row of aᵢⱼ is longer by a 1. The new
 * solution is the point of the last stage plus that stage.
 */
export declare const GROWS_FROM = 5;
/** cᵢⱼ, one row a stage. */
export declare const C: readonly (readonly number[])[];
/**
 * Fills `weights` (6) so that the solution at the share s (0..1] of the step is y + Σ weightsⱼ Uⱼ. At
 * s = 1 these are the mⱼ.
 */
export declare function solutionWeights(s: number, weights: Float64Array): void;
/**
 * Turns weights of the Uⱼ into weights of the stage right sides qᵢ, where Uᵢ = hγ(qᵢ + Σ cᵢⱼUⱼ/h) and so
 * Σ weightsⱼUⱼ = hγ Σ outᵢqᵢ. It lets a quadrature be summed once a step and not once a stage.
 */
export declare function rightSideWeights(weights: Float64Array, out: Float64Array): void;
//# sourceMappingURL=rodas-tableau.d.ts.map