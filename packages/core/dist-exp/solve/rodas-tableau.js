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
export const STAGES = 6;
export const GAMMA = 0.25;
/** αᵢ: where in the step the right side of stage i is taken. */
export const ALPHA = [0, 0.386, 0.21, 0.63, 1, 1];
/** dᵢ: the share of h ∂f/∂t that enters stage i. */
export const TIME_SHARE = [0.25, -0.1043, 0.1035, -0.0362, 0, 0];
/** aᵢⱼ, one row a stage. */
export const A = [
    [],
    [1.544],
    [0.9466785280815826, 0.2557011698983284],
    [3.314825187068521, 2.896124015972201, 0.9986419139977817],
    [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895],
    [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1],
];
/**
 * First stage whose point is that of the stage before plus that stage: its row of aᵢⱼ is longer by a 1. The new
 * solution is the point of the last stage plus that stage.
 */
export const GROWS_FROM = 5;
/** cᵢⱼ, one row a stage. */
export const C = [
    [],
    [-5.6688],
    [-2.430093356833875, -0.2063599157091915],
    [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
    [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
    [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
];
/** mⱼ: the new solution. The embedded one leaves the last stage out, so U₆ is the error estimate. */
const SOLUTION = [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1, 1];
/** The two correction rows of the dense output. */
const DENSE = [
    [10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0],
    [-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0],
];
/**
 * Fills `weights` (6) so that the solution at the share s (0..1] of the step is y + Σ weightsⱼ Uⱼ. At
 * s = 1 these are the mⱼ.
 */
export function solutionWeights(s, weights) {
    for (let j = 0; j < STAGES; j++) {
        weights[j] = s * (SOLUTION[j] + (1 - s) * (DENSE[0][j] + s * DENSE[1][j]));
    }
}
/**
 * Turns weights of the Uⱼ into weights of the stage right sides qᵢ, where Uᵢ = hγ(qᵢ + Σ cᵢⱼUⱼ/h) and so
 * Σ weightsⱼUⱼ = hγ Σ outᵢqᵢ. It lets a quadrature be summed once a step and not once a stage.
 */
export function rightSideWeights(weights, out) {
    for (let j = STAGES - 1; j >= 0; j--) {
        let sum = weights[j];
        for (let i = j + 1; i < STAGES; i++)
            sum += GAMMA * C[i][j] * out[i];
        out[j] = sum;
    }
}
//# sourceMappingURL=rodas-tableau.js.map