import { Matrix } from 'ml-matrix';
/** What a Newton search came to. */
export type NewtonEnding = {
    readonly kind: 'found';
    readonly y: Float64Array;
    readonly steps: number;
    readonly lastStep: number;
} | {
    readonly kind: 'lost';
    readonly reason: 'singular' | 'not-finite' | 'diverging' | 'too-many-steps';
};
/** An equation residual(y) = 0 in the states that are free. */
interface Equation {
    /** Indices of the states that are sought. */
    readonly free: readonly number[];
    /** Whether a state may go below zero. */
    readonly mayBeNegative: (state: number) => boolean;
    /** What counts as one of each state: the larger of it and the value itself is the measure of a step. */
    readonly scale: Float64Array;
    /** The residual of the free states, and its partials by them. */
    evaluate(y: Float64Array): {
        readonly residual: Float64Array;
        readonly matrix: Matrix;
    };
}
/**
 * Newton's method from a first guess. A step that would take an amount below zero is shortened; the search is
 * lost when steps grow, and found when a step is under 1e-10 of every state.
 */
export declare function newton(guess: Float64Array, equation: Equation): NewtonEnding;
export {};
//# sourceMappingURL=newton.d.ts.map