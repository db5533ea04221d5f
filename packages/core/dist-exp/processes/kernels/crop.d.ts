import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import type { Kernel } from './kernel.js';
/** [r 1/d at T, c g/d at T and light, a g/g, b, plateau g, n, g per t/ha, 1/recovery, b, fruit g N/g]. */
export declare function cropCoefficients(values: Values, at: Conditions): readonly number[];
/** Critical nitrogen, g N per g dry, at a mass. Here and below the coefficients begin at k[o]. */
export declare function critical(mass: number, k: ArrayLike<number>, o: number): number;
/** Growth of plant and fruit, g dry d-1. 0 for a bare batch. */
export declare function cropGrowth(mass: number, nitrogen: number, k: ArrayLike<number>): number;
/** Share of growth that goes to fruit. */
export declare function fruitShare(k: ArrayLike<number>): number;
/** Partials of a share of growth by mass and nitrogen into d[0], d[1]. */
export declare function sharePartials(share: number, mass: number, nitrogen: number, k: ArrayLike<number>, d: Float64Array): void;
/**
 * Mass after so many days of free growth under one light and warmth, g dry: the exact solution of W' = c (1 - exp(-r W / c)).
 */
export declare function grownFrom(mass: number, days: number, k: ArrayLike<number>): number;
/** Demand, g N d-1. 0 for a bare batch. */
export declare function cropDemand(mass: number, nitrogen: number, k: ArrayLike<number>): number;
/** Partials of demand by mass and nitrogen into d[0], d[1]. Returns demand. */
export declare function cropDemandPartials(mass: number, nitrogen: number, k: ArrayLike<number>, d: Float64Array): number;
/**
 * Growth and the uptake of nitrate, ammonium and calcium of every batch, handed over in this order: demand and its
 * critical curve are worked out once. Coefficients as in the three processes.
 */
export declare const cropKernel: Kernel;
//# sourceMappingURL=crop.d.ts.map