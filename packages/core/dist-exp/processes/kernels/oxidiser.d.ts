import type { Values } from '../../library/values.js';
import type { Conditions, Process } from '../process.js';
/**
 * Activity of a population of nitrifiers: growth that its water would allow, g COD d-1. What the cells that are awake
 * could do, mu(T) M(inorganic carbon) bell(pH) I(NH3) I(HNO2) X, is limited by the oxygen and then by the TAN that come
 * to the film through still water (film.ts); nitrite is made in the film itself, and limits its oxidisers as M(nitrite).
 * What heterotrophs cover of the surface rests (heterotroph.ts).
 * Each population has a room of its own on a surface, its share of the capacity by yield: what both oxidise of the same
 * nitrogen makes cells in that ratio.
 * Growth, not activity, is limited by room: a share 1 - X/room of the activity makes cells, the rest runs on
 * without growth.
 * The lower flank of the bell is that of the film (acclimation.ts): it is what the film has got used to.
 */
export declare const aobReads: readonly ["tan", "oxygen", "carbon", "pH", "ammonia", "aob", "acclimation", "heterotrophs", "awake", "nitrite"];
/** Nitrite oxidisers: the same with nitrite for substrate, which is also what nitrous acid comes of. */
export declare const nobReads: readonly ["nitrite", "oxygen", "carbon", "pH", "ammonia", "nob", "acclimation", "heterotrophs", "awake"];
/** Coefficients of ammonia oxidisers; half-saturations g m-3, of carbon mol m-3, inhibitors g N m-3. */
export declare const aobCoefficients: (values: Values, at: Conditions) => readonly number[];
/** Coefficients of nitrite oxidisers, in the same order. */
export declare const nobCoefficients: (values: Values, at: Conditions) => readonly number[];
/** Activity of ammonia oxidisers, g COD d-1. */
export declare function aobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number;
/** Activity of nitrite oxidisers, g COD d-1. */
export declare function nobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number;
/** Partials of the activity of ammonia oxidisers times `times`, by the ten variables. Returns the activity. */
export declare function aobActivityPartials(times: number, v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): number;
/** Partials of the activity of nitrite oxidisers times `times`, by the nine variables. Returns the activity. */
export declare function nobActivityPartials(times: number, v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): number;
type Activity = (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
type ActivityPartials = (times: number, v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => number;
/** Growth, g COD d-1: activity x room left. Variable 5 is the population, k[7] its room. */
export declare function growing(activity: Activity, activityPartials: ActivityPartials): Pick<Process, 'rate' | 'partials'>;
/** Oxidation without growth, g N d-1: activity x fullness / yield. */
export declare function idling(activity: Activity, activityPartials: ActivityPartials): Pick<Process, 'rate' | 'partials'>;
export {};
//# sourceMappingURL=oxidiser.d.ts.map