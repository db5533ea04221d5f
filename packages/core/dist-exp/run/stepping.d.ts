import type { Model } from '../model/model.js';
import type { Action } from '../scenario/scenario.js';
import { type OpenIntegrator, type SimulateOptions } from './driver.js';
import type { Outcome, Sample } from './run.js';
import type { ResumableRun, RunState } from './run-state.js';
/**
 * A run that goes on when it is told to. It stops before anything is done that is due where it stands: rules, harvests
 * and actions see the same water as who reads it there.
 */
export declare class Stepping {
    private readonly driver;
    private readonly model;
    /** What is still to be done where it stands: the start, or the end of a segment (at a mark of the water, or not). */
    private due;
    /** Whether an action waits to be done. */
    private waiting;
    private finished;
    constructor(model: Model, options: SimulateOptions, openIntegrator: OpenIntegrator);
    /** Where it stands, d since the start. */
    get day(): number;
    /** How it ended, where it has come to its end or has broken off. */
    get outcome(): Outcome | undefined;
    /**
     * Runs to a time, d, or to the end of the run where that comes first. Returns whether the run goes on.
     * @throws RangeError for a time that has passed, and once the run was finished
     */
    advance(to: number): boolean;
    /**
     * Takes in an action to be done where the run stands, with those of that instant, as it goes on.
     * @throws RangeError when the run is over
     */
    do(action: Action): void;
    /** Everything as it stands, before what is due. */
    look(): Sample;
    /** The last sample that the run has kept from before where it stands. */
    lastSample(): Sample | undefined;
    /**
     * The state that it stands in.
     * @throws RangeError while an action waits to be done: it would be lost
     */
    state(): RunState;
    /** The run up to where it stands. Nothing can be done with it afterwards. */
    finish(): ResumableRun;
    private refuseFinished;
    private doWhatIsDue;
}
/**
 * Runs a model from its start to its end.
 *
 * At each day boundary, in this order: record; harvest what is ripe; rules, by readings of the water as it
 * stands; actions of that instant in the order of `actionOrder`; rations and weather of the day; then integrate. Every instant at which
 * anything jumps (action, pump timer, hours of feeding, a water level reaching a mark) ends a segment.
 * Never throws for numerical trouble: the outcome names it and the run holds what was reached.
 */
export declare function simulate(model: Model, options?: SimulateOptions): ResumableRun;
/** As `simulate`, with an integrator of the caller's: one that records, replays or times each segment. */
export declare function simulateWith(model: Model, options: SimulateOptions, openIntegrator: OpenIntegrator): ResumableRun;
//# sourceMappingURL=stepping.d.ts.map