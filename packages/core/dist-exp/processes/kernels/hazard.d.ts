import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
/** What deaths depend on; the amount that dies comes after them. */
export declare const hazardReads: readonly ["oxygen", "ammonia", "nitrite", "chloride", "carbon-dioxide"];
/** What fish die of. */
export declare const causesOfDeath: readonly ["other", "cold", "heat", "oxygen", "un-ionised ammonia", "nitrite", "carbon dioxide"];
/** What a fish died of: `other` is what dies in sound water. */
export type CauseOfDeath = (typeof causesOfDeath)[number];
/**
 * [hazard of temperature and of sound water, d-1; highest hazard, d-1; oxygen hazard times the lethal oxygen to the power of
 * the slope; that slope; LC50 of un-ionised ammonia and of nitrite without chloride, g m-3; chloride that halves the effect
 * of nitrite, g m-3; LC50 of carbon dioxide, mol m-3; slope of the three].
 */
export declare function hazardCoefficients(values: Values, at: Conditions): readonly number[];
/** Deaths of an amount, per day; variables: those of the hazard, then the amount. */
export declare const deaths: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/**
 * Hazard of each cause, d-1, in the order of `causesOfDeath`.
 * @param water oxygen, un-ionised ammonia, nitrite, chloride (g m-3), carbon dioxide (mol m-3)
 */
export declare function hazardsOf(values: Values, at: Conditions, water: Float64Array): readonly number[];
//# sourceMappingURL=hazard.d.ts.map