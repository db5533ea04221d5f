import { type Component } from '../processes/components.js';
import type { Run } from '../run/run.js';
import { type Budget } from './budget.js';
/** What stands on the far side of the edge of the system, in plain words: an account, or a gas of the air. */
export declare function outsideName(account: string, component: Component): string;
/** Where in the system a component is held, in plain words. */
export declare function storeName(component: Component): string;
/** Every name that `to` of the fates of some budget may hold. */
export declare const fateNames: readonly string[];
/** A named part of a balance. */
export interface Share {
    readonly name: string;
    /** In the unit of the budget, above 0. */
    readonly amount: number;
    /** Of all that came from anywhere, 0..1. */
    readonly share: number;
}
/**
 * Where a quantity came from and where it went: both lists sum to `total`, less the `residual`; in the unit of the
 * budget.
 */
export interface Fates {
    readonly total: number;
    readonly from: readonly Share[];
    readonly to: readonly Share[];
    readonly residual: number;
}
/**
 * Reads a budget of the whole system as a story: so much came from feed, from source water, or out of
 * what was there ("drawn from water"); so much went to each account or stays in fish, crop, water,
 * biofilm and solids. Shares of `to` sum to 1 but for the residual.
 */
export declare function fatesOf(budget: Budget): Fates;
/** Where a quantity had gone by each of some times, in the unit of its budget. */
export interface FatesOver {
    /** d. */
    readonly time: readonly number[];
    /** Names as in `fatesOf(...).to`, the largest at the end first; one of the `amounts` for each time. */
    readonly parts: readonly {
        readonly name: string;
        readonly amounts: readonly number[];
    }[];
}
/**
 * Where nitrogen (g N) or water (m3) had gone by each time of a run: the fates of the run up to there, over the
 * whole system. At the start all is 0.
 * @param most most times, at least 2; the first and last output times are always among them
 */
export declare function fatesOver(run: Run, quantity: 'nitrogen' | 'water', most: number): FatesOver;
//# sourceMappingURL=fates.d.ts.map