import type { Model } from '../model/model.js';
import { type Component, type Conserved } from '../processes/components.js';
import type { Posting, Run } from '../run/run.js';
/** What concerns one vessel, by index: so that the budgets of all vessels take one pass and not one each. */
interface Concerns {
    readonly rows: readonly number[];
    readonly streams: readonly number[];
    readonly states: readonly number[];
}
/** Rows that move a state of a vessel, streams that begin or end there, and its states, each ascending. */
export declare function concernsOf(model: Model, vessel: number): Concerns;
/** Where a budget is drawn up: around one vessel (by index) or around the whole system. */
export type Boundary = number | 'system';
/** Something that crossed a boundary during a run. */
export interface Crossing {
    /** On the far side: a vessel, or an account outside. */
    readonly beyond: string;
    readonly component: Component;
    /** Process, kind of stream, or `action`. */
    readonly by: string;
    /** Of the conserved quantity; above 0 is into the boundary. */
    readonly amount: number;
}
/** Content of one unit of what a posting moved. */
export declare function contentPosted(model: Model, state: number, component: Component, quantity: Conserved): number;
/** Whether a posting crosses the edge of the system: fish that are graded stay in it. */
export declare const leavesOrComes: ({ account }: Posting) => boolean;
/**
 * All that crossed a boundary between the first and the last sample of a run.
 * @param quantity nitrogen g N, oxygen-demand g O2, charge eq, chloride g, carbon mol, water m3
 * @param boundary the whole system, or the index of a vessel
 */
export declare function crossings(run: Run, quantity: Conserved, boundary: Boundary): readonly Crossing[];
export {};
//# sourceMappingURL=crossings.d.ts.map