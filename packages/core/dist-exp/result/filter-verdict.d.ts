import type { Run } from '../run/run.js';
import type { Series } from './series.js';
/** What holds back a filter. */
export type FilterHeld = 'oxygen' | 'carbon' | 'acid' | 'cold' | 'young' | 'covered' | 'stunned' | 'load';
/**
 * Whether the filter kept up with the fish: it falls behind while more ammonia and nitrite stand in the water than a day
 * brings, and either of them is above its guide in a vessel with fish.
 */
export interface FilterVerdict {
    readonly state: 'keeps-up' | 'falls-behind' | 'caught-up';
    /** What stands out more, as a multiple of its guide. */
    readonly by: 'ammonia' | 'nitrite';
    /**
     * What held back the ammonia oxidisers most when they first fell behind, in the vessel with most of their surface:
     * `young` they were not grown in, `covered` by what grows on organic matter, `stunned` by a bath or lack of air, `load` nothing but how much there was to do.
     */
    readonly held?: FilterHeld;
    /** d: when it first fell behind; absent where it did not. */
    readonly from?: number;
    /** d: when it last caught up; absent where it did not. */
    readonly until?: number;
    /** Most TAN in a vessel with fish, mean of a day, mg N/L. */
    readonly ammonia: number;
    /** The same of nitrite, mg N/L. */
    readonly nitrite: number;
}
/** Whether the filter of a run kept up; undefined where the system has neither fish nor anything given to the filter. */
export declare function filterVerdict(run: Run, series: readonly Series[]): FilterVerdict | undefined;
//# sourceMappingURL=filter-verdict.d.ts.map