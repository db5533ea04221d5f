import type { LinearSolverFactory, RateSystem, WorkCounts } from './contract.js';
/** What became of one try at a step. */
export type Attempt = 'computed' | 'not-finite' | 'singular';
/**
 * One step of RODAS on y' = Sᵀ r with the extents x' = r as a quadrature on the same stages. The extents
 * have no column in the Jacobian, so their stages are Vᵢ = hγ(rᵢ + R Uᵢ + dᵢ h ∂r/∂t + Σ cᵢⱼVⱼ/h) with
 * R = ∂r/∂y, and Sᵀ Vᵢ = Uᵢ; weighted sums of them are taken at once from the rates of the stages.
 */
export declare class RodasStep {
    private readonly system;
    private readonly work;
    /** The solution at the end of the step tried last. */
    readonly next: Float64Array;
    /** Its error estimate. */
    readonly error: Float64Array;
    /** First state found not finite, or whose pivot failed, in the last failure. */
    failed: number;
    private readonly matrix;
    /** From rates to states, and from states to rates by the partials. */
    private readonly moves;
    private readonly spread;
    private readonly partials;
    private readonly ratesByTime;
    private readonly slopeByTime;
    private readonly stageRates;
    private readonly stages;
    private readonly point;
    private readonly slope;
    private readonly firstSlope;
    private readonly weights;
    private readonly rateWeights;
    private t;
    private h;
    private y;
    constructor(system: RateSystem, work: WorkCounts, makeSolver: LinearSolverFactory);
    /** Takes rates and Jacobian at (t, y); every try from there uses them. False when not finite. */
    begin(t: number, y: Float64Array): boolean;
    /** Fills `slope` with y' and `bend` with y'' = J y' + ∂f/∂t at the beginning. */
    derivatives(slope: Float64Array, bend: Float64Array): void;
    /** Tries a step of length h; on 'computed', `next` and `error` hold its outcome. */
    attempt(h: number): Attempt;
    /** Fills `out` with y at the share s of the step tried last. */
    solution(s: number, out: Float64Array): void;
    /** Fills `out` with what the extents gain over the share s of the step. False when not finite. */
    extents(s: number, out: Float64Array): boolean;
    private blame;
    private blameDerivatives;
}
/** Whether every entry is a finite number; four sums that do not wait for each other. */
export declare function allFinite(v: Float64Array): boolean;
/** Index of the first entry that is not a finite number, or -1. */
export declare function firstNotFinite(v: Float64Array): number;
//# sourceMappingURL=rodas-step.d.ts.map