import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
/** Nitrogen of feed, g N per g (0.16 of protein: the 6.25 convention). */
export declare function feedNitrogen(values: Values): number;
/** Body fat that is usual in a fish of a relative mass, g COD per g wet: rises with size (Lupatsch et al. 1998). */
export declare function usualFat(values: Values, relative: number): number;
/** Energy that a gram of feed eaten adds to the body, g COD: what is digested times the share retained. */
export declare function retainedDemand(values: Values): number;
/** Nitrogen that is digested of a gram of feed, g N. */
export declare const digestedNitrogen: (values: Values) => number;
/** What growth depends on: intake, and body fat. */
export declare const growthReads: readonly ["oxygen", "ammonia", "nitrite", "chloride", "carbon-dioxide", "fish-mass", "fish-number", "fish-fat"];
/**
 * Those of intake, then [energy retained per g of feed, g COD; most growth that its protein allows, g per g; lean body,
 * g COD per g; fat usual at 100 g, g COD per g; its exponent of size].
 */
export declare function growthCoefficients(values: Values, at: Conditions): readonly number[];
/** Growth of a group, g wet d-1. */
export declare function growth(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number;
/** Fills d[0] to d[7] with the partials of growth. Returns growth, g d-1. */
export declare function growthPartials(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): number;
/** What upkeep depends on. */
export declare const upkeepReads: readonly ["oxygen", "fish-mass", "fish-number", "fish-fat"];
/**
 * [energy burnt by fish of 100 g, g COD per g and day; how it rises with the mass of a fish; half-saturation of oxygen,
 * g m-3; fat per body at which lean body and fat are burnt alike, g COD per g].
 */
export declare function upkeepCoefficients(values: Values, at: Conditions): readonly number[];
/** Body fat burnt by upkeep, g COD d-1. */
export declare const fatUpkeep: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** Lean body burnt by upkeep, g COD d-1. */
export declare const leanUpkeep: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
//# sourceMappingURL=fish-energy.d.ts.map