import type { Run } from '../run/run.js';
/** Something that is held, as a sum of states, as water of vessels, or as a size that does not change. */
export type Store = {
    readonly kind: 'states';
    readonly states: readonly number[];
} | {
    readonly kind: 'water';
    readonly vessels: readonly number[];
} | {
    readonly kind: 'size';
    readonly name: string;
    readonly value: number;
};
/** A quantity that `why` can split: an amount, or an amount per another. */
export interface WhyQuantity {
    readonly name: string;
    readonly unit: string;
    readonly amount: Store;
    readonly per?: Store;
    /** The same quantity over the whole system, for a concentration in one vessel. */
    readonly whole?: WhyQuantity;
}
/**
 * Every quantity of a run that is a sum of what processes, flows and actions did. Names and units are
 * those of the series; beside them `-amount` for what a series gives per volume or surface, and
 * `@system` for all vessels, cohorts or plantings together (a concentration: the mean of all water).
 */
export declare function quantitiesOf(run: Run): readonly WhyQuantity[];
//# sourceMappingURL=why-quantities.d.ts.map