import { type Parameters } from '../library/parameters.js';
import type { WaterLog } from '../log/water-log.js';
import type { Run } from '../run/run.js';
import type { Measurable, Scenario } from '../scenario/scenario.js';
import { type FitSystem } from './fitted-system.js';
import type { Free } from './free-parameter.js';
import { type ReadingError } from './reading-loss.js';
import { type Observation } from './readings.js';
import { type LogForcing, type UnloggedFeed } from './with-log.js';
/** What is looked for in a run: a quantity in a vessel at a time, d. */
export interface Sought {
    readonly reads: Measurable;
    readonly vessel: number;
    readonly time: number;
}
/**
 * What truly stands in a run, on the straight line between its outputs; undefined where the run broke off or a
 * value is not finite. The run must reach every time.
 */
export declare function predictionsOf(run: Run, sought: readonly Sought[]): Float64Array | undefined;
/** What is fitted, and to what. */
export interface FitRequest {
    readonly system: FitSystem;
    readonly log: WaterLog;
    /** As `--free` writes them; none: a usual set. */
    readonly free: readonly string[];
    /** What may vary with its prior, in place of `free`. */
    readonly numbers?: readonly Free[];
    /** Last date of the log that counts; absent: its last. */
    readonly until?: string;
    /** Default `last`. */
    readonly unloggedFeed?: UnloggedFeed;
    /** Relative tolerance of the runs; default 1e-4, far below the error of any kit. */
    readonly tolerance?: number;
    /** Called after each run, for a progress bar. */
    readonly onRun?: () => void;
}
/** A system, its log and what may vary, ready to be run. */
export interface FitProblem {
    readonly scenario: Scenario;
    readonly parameters: Parameters;
    readonly free: readonly Free[];
    readonly observations: readonly Observation[];
    /** Last date that counts. */
    readonly until: string;
    /** Length of the runs, d: to the day after the last date and some days on. */
    readonly days: number;
    /** Days that they go on after the last date. */
    readonly ahead: number;
    readonly errorOf: (reads: Measurable) => ReadingError;
    /** The scenario at standard deviates, with the log's feed and temperature. */
    readonly scenarioAt: (at: ArrayLike<number>) => Scenario;
    /** What the log tells of feed and temperature. */
    readonly forcing: LogForcing;
    /** Values looked for in a run at deviates; undefined where the run breaks off. */
    readonly predict: (at: ArrayLike<number>, sought: readonly Sought[]) => Float64Array | undefined;
    /** What was assumed and left out, one line each. */
    readonly notes: readonly string[];
}
/** What readings of a log are looked for as. */
export declare function soughtOf(observations: readonly Observation[]): readonly Sought[];
/**
 * Makes a fit ready: reads the system for as long as the log goes, takes from the log feed, temperature and readings, and
 * reads what may vary.
 * @param ahead days that the runs go on after the last date
 * @throws InputError where the log is empty, of another time, or holds no reading of this system, and where a free
 *   number is none
 */
export declare function openFitProblem(request: FitRequest, ahead?: number): FitProblem;
//# sourceMappingURL=fit-problem.d.ts.map