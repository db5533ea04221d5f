import { type Tolerance } from './contract.js';
/**
 * Step sizes by the predictive controller of Gustafsson for a method whose error estimate is of order 4
 * in h. Source [R]: Hairer & Wanner, Solving ODEs II, section IV.8; constants as there.
 * `natural` is the step that accuracy asks for; what is taken may be shorter to land on the end.
 */
export declare class StepControl {
    readonly memory: import("./contract.js").StepMemory;
    /** The step to try after one refused. */
    retry: number;
    private lastStep;
    private lastError;
    private refused;
    private opens;
    get natural(): number | undefined;
    set natural(step: number | undefined);
    /** Forgets all steps: what follows has nothing to do with what went before. */
    restart(natural: number | undefined): void;
    /**
     * Starts a segment: the error history does not go on (something may have jumped), the natural step does, but
     * where one segment is like the other, as days are, it begins as the last one did and not as it ended.
     */
    beginSegment(): void;
    /** The step to take now: the natural one, or what reaches the end without leaving a sliver. */
    fit(remaining: number, natural: number): number;
    /** Takes note of an accepted step. One cut short by the end never shrinks the natural step. */
    accept(step: number, error: number): void;
    /** Two beginnings in a row at which the natural step was refused are a habit; a longer step ends it. */
    private learnOpening;
    /** Takes note of a step refused for its error, above 1. */
    reject(step: number, error: number): void;
    /** Takes note of a step that failed without an error estimate. */
    fail(step: number): void;
    private shrink;
}
/** Throws RangeError unless every tolerance is a finite number above 0 and there is one for each state. */
export declare function checkTolerance(tolerance: Tolerance, states: number): void;
/**
 * Root mean square of v weighted by absolute + relative · max(|y|, |other|) of each state: 1 is exactly at
 * the tolerance. Source [R]: Hairer, Norsett & Wanner, Solving ODEs I, section II.4.
 */
export declare function errorNorm(v: Float64Array, y: Float64Array, other: Float64Array, tolerance: Tolerance): number;
/** Index of the state with the largest weighted entry of v, the first not a number before all; -1 if none. */
export declare function worstState(v: Float64Array, y: Float64Array, tolerance: Tolerance): number;
/**
 * First step from y, y' and y'': with the time scale τ = |y'|/|y''| the error of an order-4 estimate is
 * taken as |y'| τ (h/τ)⁴ in the weighted norm and set to 0.01; a step may not change y by more than its own
 * size unless y is within tolerance of 0. After the starting rule of Hairer, Norsett & Wanner, Solving
 * ODEs I, section II.4 [R], with τ in place of a unit of time.
 */
export declare function firstStep(y: Float64Array, slope: Float64Array, bend: Float64Array, tolerance: Tolerance, span: number): number;
//# sourceMappingURL=step-control.d.ts.map