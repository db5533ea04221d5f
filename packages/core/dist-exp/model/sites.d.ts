import type { Values } from '../library/values.js';
import type { Process } from '../processes/process.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Layout, PlaceIndex } from './layout.js';
import type { Metabolism, Subject } from './scope.js';
/** A place at which a process works. */
export interface Site extends PlaceIndex {
    readonly place: string;
    /** Feed for which the row holds (`feedKey`). */
    readonly feed?: string;
    readonly subject: Subject;
}
/**
 * Places at which a process works: those of its kind that its own rule (`where`) lets it work at.
 * @param metabolisms of cohorts with a measured feed conversion: `metabolismsOf`
 */
export declare function sitesOf(process: Process, scenario: Scenario, layout: Layout, metabolisms: ReadonlyMap<string, Metabolism>): readonly Site[];
/** Places at which a process of a user's own works: those where all of their own components stand that it is about. */
export declare function sitesWithOwn(process: Process, scenario: Scenario, layout: Layout, values: Values, metabolisms: ReadonlyMap<string, Metabolism>): readonly Site[];
//# sourceMappingURL=sites.d.ts.map