import type { TableRow } from '../../library/table-row.js';
/** A point with one input put elsewhere. */
export declare function moved(point: Float64Array, input: number, to: number): Float64Array;
/** Points at which to work out an outcome: uniform numbers (0..1), one for each input. */
export type Points = readonly Float64Array[];
/** How one input moved the outcome in a screening; in the unit of the outcome per whole range of the input. */
export interface ElementaryEffects {
    /** Mean of the sizes: how much the input matters. */
    readonly muStar: number;
    /** Mean with sign. */
    readonly mu: number;
    /** Standard deviation: how much that depends on the others, or on where. NaN for fewer than two. */
    readonly sigma: number;
    /** Effects that could be worked out. */
    readonly effects: number;
}
/**
 * Trajectories of M. D. Morris, "Factorial sampling plans for preliminary computational experiments",
 * Technometrics 33 (1991): from a random point of a grid of four levels, each input in turn, in a random
 * order, goes half its range up or down. Each of the `trajectories` takes `inputs` + 1 points, one after the other;
 * `seed` is that of their random places and orders.
 */
export declare function morrisDesign(inputs: number, trajectories: number, seed: number): Points;
/**
 * Elementary effects from the outcomes at the points of a design (mu* after Campolongo, Cariboni and
 * Saltelli 2007). Outcomes that are NaN (a run that broke off) leave out the two effects they belong to.
 */
export declare function elementaryEffects(points: Points, outcomes: ArrayLike<number>): readonly ElementaryEffects[];
/**
 * Places of the inputs that matter in a screening: those that move the outcome by at least a `share` (0..1)
 * of what the strongest does, the strongest first, no more than so many (`most`); none where nothing moves it.
 */
export declare function fewOf(effects: readonly Pick<ElementaryEffects, 'muStar'>[], { share, most }?: {
    readonly share?: number;
    readonly most?: number;
}): readonly number[];
/** What decides how the number of a row is drawn. */
export type Spread = Pick<TableRow, 'value' | 'low' | 'high' | 'distribution'>;
/**
 * Share (0..1) of the draws of a row that lie below `x`, in the unit of the row. A fixed row is taken as at its middle.
 */
export declare function shareBelow(row: Spread, x: number): number;
/** How an outcome answers to a small change of one number. */
export interface LocalEffect {
    /** Change of the outcome, in its unit, per unit of the number. */
    readonly slope: number;
    /** Percent of the outcome for each percent of the number; NaN where either is 0. */
    readonly elasticity: number;
    /** Slope times the range of the number, in the unit of the outcome: as if the outcome ran straight. */
    readonly overRange: number;
}
/** The uniform numbers at which each row has the value it has in the tables. */
export declare function middleOf(rows: readonly TableRow[]): Float64Array;
/**
 * Central differences: for each of the `inputs` (places in `rows`) two points, a little below and above its value, all
 * else as it stands.
 */
export declare function localDesign(rows: readonly TableRow[], inputs: readonly number[]): Points;
/**
 * Slopes and elasticities from the outcomes at the points of `localDesign`.
 * @param inputs as given to `localDesign`
 * @param outcome with every number as it stands
 */
export declare function localEffects(rows: readonly TableRow[], inputs: readonly number[], outcomes: ArrayLike<number>, outcome: number): readonly LocalEffect[];
//# sourceMappingURL=one-at-a-time.d.ts.map