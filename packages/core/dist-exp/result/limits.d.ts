import type { Model } from '../model/model.js';
import type { Run } from '../run/run.js';
import { type Verdict } from './judge.js';
import { type PlacedLimit } from './limit-check.js';
import { type Series } from './series.js';
/**
 * How a run stood to one limit at one place, all that a phrase about it needs: what (`quantity`, `direction`, `value`,
 * `unit`, `averaging`, for `whom`, by which source), where, and the verdict (first when, how long, how far).
 */
export interface LimitResult extends PlacedLimit, Verdict {
    /** Whether the averaging time is as long as the output step: a shorter one cannot be resolved, the values at the output times are compared as they are. */
    readonly resolved: boolean;
}
/**
 * How far within a limit at the worst, as a share of the limit (of one unit where the limit is 0); below 0 beyond it,
 * NaN where it was not judged.
 */
export declare function marginOf({ worst, value, direction }: LimitResult): number;
/** Order of limits that were passed: by the harm of it, then by how long. For sorting. */
export declare function worstFirst(a: Pick<LimitResult, 'harm' | 'total'>, b: Pick<LimitResult, 'harm' | 'total'>): number;
/** Every limit that runs of a model are held against, in the order of `limitsOf`. */
export declare function limitNames(model: Model): readonly PlacedLimit[];
/**
 * Holds a run against every limit of the tables for its species, crops and water. Values between output
 * times are not seen: an averaging time shorter than the output step is marked as not resolved, and a run
 * shorter than an averaging time is not judged by it. A design aid: fish welfare, food safety and
 * discharge stay with local codes and licensed practice.
 * @param series all series of the run, where they are at hand
 */
export declare function limitsOf(run: Run, series?: readonly Series[]): readonly LimitResult[];
//# sourceMappingURL=limits.d.ts.map