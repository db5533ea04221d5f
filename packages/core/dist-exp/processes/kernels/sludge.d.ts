import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import type { Kernel } from './kernel.js';
/** Variables of settled solids that breathe oxygen. */
export declare const oxicReads: readonly ["oxygen", "settled", "settled-refractory"];
/** Variables of settled solids where oxygen does not reach. */
export declare const anoxicReads: readonly ["oxygen", "nitrate", "settled", "settled-refractory"];
/** Coefficients 0 to 2 of all that breathe: breakdown 1/d, reach q, half-saturation of oxygen. */
export declare function breathCoefficients(values: Values, at: Conditions): readonly [number, number, number];
/** Nitrate that 1 g of settled matter takes as it is hydrolysed, g N: 5/4 mol O2 of demand per mol N, less cells. */
export declare function nitrateTaken(values: Values): number;
/**
 * Coefficients of what oxygen does not reach: those of all, 3 activity, 4 half-saturation of nitrate and 5 by how much it
 * rises with each g that wants nitrate. All that is hydrolysed below is burnt where it meets nitrate on its way up, so
 * that only the still water over the floor sets a bound: N k_N A; uptake R and that bound B give R B / (R + B).
 */
export declare function airlessCoefficients(values: Values, at: Conditions): readonly number[];
/** k0 x share that oxygen reaches x s, of variables [oxygen, s, r]. */
export declare const oxic: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** k0 k3 u M(nitrate; k4 + k5 u), u the settled matter that oxygen does not reach, of variables [oxygen, nitrate, s, r]. */
export declare const anoxic: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** As `anoxic`, where nitrate does not come: K/(K + nitrate) in place of M. */
export declare const anaerobic: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/**
 * The three breaths of settled solids together, in the order oxygen, nitrate, neither: the share that oxygen reaches is
 * worked out once a floor.
 */
export declare const sludgeKernel: Kernel;
//# sourceMappingURL=sludge.d.ts.map