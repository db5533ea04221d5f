import { type Conserved } from '../processes/components.js';
import type { Component } from '../processes/components.js';
import type { Run } from '../run/run.js';
import { type Boundary } from './crossings.js';
/** Everything of one kind that crossed, one way. */
export interface BudgetLine {
    /** Such as `feed: feed-nitrogen` or `air: dinitrogen`; for a vessel, `sump: nitrate`. */
    readonly name: string;
    readonly beyond: string;
    readonly component: Component;
    /** Process, kind of stream, or `action`. */
    readonly by: string;
    /** Above 0: came in. Below 0: went out. */
    readonly amount: number;
}
/** The `amount` that one component gained (+) or lost (-) inside the boundary, in the unit of the budget. */
export interface StoredLine {
    readonly component: Component;
    readonly amount: number;
}
/**
 * The balance of one conserved quantity around one boundary, in its unit (nitrogen g N, oxygen-demand
 * g O2, charge eq, chloride g, carbon mol, water m3).
 *
 * `in`, `out` and `stored` (gain of what is inside) are over the whole run; `residual` = in - out - stored: what the run made from nothing (-) or lost (+). `throughput` = in +
 * out + what was there at the start (sum of absolute contents), so that a closed vessel, through which
 * nothing passes, is still measured against something.
 */
export interface Budget {
    readonly quantity: Conserved;
    /** `system` or the name of a vessel. */
    readonly place: string;
    readonly in: number;
    readonly out: number;
    readonly stored: number;
    readonly residual: number;
    readonly throughput: number;
    readonly lines: readonly BudgetLine[];
    readonly stores: readonly StoredLine[];
}
/**
 * Balance of one conserved quantity over a whole run.
 * @param boundary `system`, or the index of a vessel. The rain tank stands outside: its water comes in
 *   as top-up; what runs over its edge is the series `rain-tank-spilled@system`.
 */
export declare function budgetOf(run: Run, quantity: Conserved, boundary: Boundary): Budget;
/** Budgets of every conserved quantity: of the whole system first, then of each vessel in turn. */
export declare function budgetsOf(run: Run): readonly Budget[];
/** Residual of a budget as a share of its throughput: 0 where both are 0, infinite where it cannot be told. */
export declare function relativeResidual(budget: Budget): number;
/**
 * The budget that closes worst, and the `share` of its throughput by which it does not close. Throws RangeError when
 * there is none.
 */
export declare function worstResidual(budgets: readonly Budget[]): {
    readonly budget: Budget;
    readonly share: number;
};
//# sourceMappingURL=budget.d.ts.map