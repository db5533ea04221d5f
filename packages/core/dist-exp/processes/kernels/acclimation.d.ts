import type { Values } from '../../library/values.js';
/** Flank of a film that has long grown in water of a pH. */
export declare function flankGrownAt(values: Values, pH: number): number;
/** [1/time constant, flank of a fresh film, distance below the water, lowest flank]. */
export declare function acclimationCoefficients(values: Values): readonly number[];
/** How fast the flank of a film moves towards that of its water, pH d-1. Variables: pH, flank. */
export declare const acclimation: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
//# sourceMappingURL=acclimation.d.ts.map