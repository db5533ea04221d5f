import type { TableRow } from '../../library/table-row.js';
import type { Run } from '../../run/run.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
/** The values of rows at uniform numbers (0..1), one for each, by id. Throws RangeError where a row has no legal value. */
export declare function drawnValues(rows: readonly TableRow[], u: ArrayLike<number>): ReadonlyMap<string, number>;
/** How runs are made. */
export interface RunsOptions {
    /** Relative tolerance of the integration; default as for `simulate`. */
    readonly tolerance?: number;
    /** Whether each run is read out before the next is asked for: its samples then make way for those of the next. */
    readonly reuse?: boolean;
}
/**
 * Runs of one system with numbers of the tables drawn from their ranges. Reading, compiling and running are
 * all done anew with the drawn numbers; only the text is parsed, and closure checked at random draws, once.
 * @param rows what is drawn
 * @returns the run at uniform numbers (0..1), one for each row. It throws InputError where the drawn numbers make no system.
 */
export declare function openRuns(open: OpenScenario, rows: readonly TableRow[], { reuse, ...options }?: RunsOptions): (u: ArrayLike<number>) => Run;
//# sourceMappingURL=open-runs.d.ts.map