import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
/** What intake depends on, in this order; a process may read more after them. */
export declare const intakeReads: readonly ["oxygen", "ammonia", "nitrite", "chloride", "carbon-dioxide", "fish-mass", "fish-number"];
/** How many variables and coefficients intake has. */
export declare const INTAKE_READS: 7;
export declare const INTAKE_COEFFICIENTS = 9;
/** Body mass, g, for which numbers that go with size are stated. */
export declare const STATED_MASS = 100;
/** Mean mass of a fish, in units of the stated mass; 1 where there are none. */
export declare function relativeMass(mass: number, number: number): number;
/** d(relative mass)/d(mass). */
export declare const byMass: (number: number) => number;
/** d(relative mass)/d(number), of that relative mass. */
export declare const byNumber: (relative: number, number: number) => number;
/**
 * Share of full appetite at a water temperature, 0..1: 0 at the ends of the range in which a species feeds, 1 in its
 * optimum, a quarter of a sine between.
 */
export declare function temperatureShare(values: Values, temperature: number): number;
/**
 * [feed offered that fish could eat as a mass, g d-1; the same as a share of body mass, d-1; appetite of fish of 100 g at
 * this temperature, d-1; how it falls with size; oxygen, un-ionised ammonia, nitrite without chloride (g m-3) at which half
 * is eaten; chloride that halves the effect of nitrite, g m-3; carbon dioxide at which half is eaten, mol m-3].
 */
export declare function intakeCoefficients(values: Values, at: Conditions): readonly number[];
/** By how much chloride lessens what nitrite does: 1 without any; the gills take up both by one way. */
export declare const guarded: (chloride: number, halving: number) => number;
/** d(guarded)/d(chloride). */
export declare const guardedSlope: (chloride: number, halving: number) => number;
/** Feed eaten by a group, g d-1: what is offered or what it wants, whichever is less. */
export declare function intake(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number;
/** Fills d[0] to d[6] with the partials of feed eaten. Returns feed eaten, g d-1. */
export declare function intakePartials(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): number;
//# sourceMappingURL=intake.d.ts.map