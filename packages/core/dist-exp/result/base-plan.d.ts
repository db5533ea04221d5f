import type { Run } from '../run/run.js';
/** What one product brought to one vessel over a run. */
export interface BaseUse {
    readonly product: string;
    readonly vessel: string;
    /** g. */
    readonly mass: number;
    /** eq of alkalinity; below 0: an acid. */
    readonly equivalents: number;
    /** What the product is, what it brings beside its base and how to handle it, as its row in the tables says. */
    readonly note: string;
}
/** Base and acid used in a run, by actions, plans, rules and dosers together. */
export interface BasePlan {
    /** Length of the run, d. */
    readonly days: number;
    /** Feed given, kg. */
    readonly feed: number;
    /** Products that bring base or acid, by vessel, in the order in which they were first used. */
    readonly uses: readonly BaseUse[];
    /** eq of base in all. */
    readonly base: number;
    /** eq of acid in all. */
    readonly acid: number;
}
/**
 * The base plan of a run: grams and equivalents of every product with alkalinity, for growers who must buy and feed it.
 * What has none (salt, citric acid) is left out.
 */
export declare function basePlan(run: Run): BasePlan;
//# sourceMappingURL=base-plan.d.ts.map