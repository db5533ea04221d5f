import { type CauseOfDeath } from '../processes/kernels/hazard.js';
import type { Model } from './model.js';
import { type Waters } from './water-chemistry.js';
/** One cause of death and how many die of it, as a share of those alive, d-1. */
export interface Hazard {
    readonly cause: CauseOfDeath;
    readonly perDay: number;
}
/** What the fish of a cohort die of in their water at a moment, the worst first; nothing of what water without a pH would do. */
export declare function hazardsIn(model: Model, cohort: number, waters: Waters): readonly Hazard[];
/** Of each cohort the row of the model whose extent is the number of fish that have died. */
export declare function rowsOfDeaths({ layout, rows }: Model): readonly number[];
//# sourceMappingURL=hazards.d.ts.map