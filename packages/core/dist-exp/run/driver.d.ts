import type { Model } from '../model/model.js';
import { type Rates } from '../model/rates.js';
import type { Action } from '../scenario/scenario.js';
import type { Integrator, IntegratorFactory, Tolerance } from '../solve/contract.js';
import { type Sample } from './run.js';
import type { ResumableRun, RunRecord, RunState } from './run-state.js';
import { type SampleBuffer } from './sample-buffer.js';
/** How a run is made. */
export interface SimulateOptions {
    /** Absent: RODAS, a Rosenbrock method. A second one, that shares nothing with it, is `odex` of `@leat/core/odex`. */
    readonly integrator?: IntegratorFactory;
    /** Relative tolerance; default 1e-5: no series of the demo year then is off by more than about 1e-4. */
    readonly tolerance?: number;
    /** Called at each day boundary with the number of the `day`, from 0, for a progress bar. */
    readonly onDay?: (day: number) => void;
    /** Where the samples are kept; default: in arrays of their own. */
    readonly buffer?: SampleBuffer;
}
/** Makes the integrator of a run from its rates, whose regime is that of the segment to come, and its tolerance. */
export type OpenIntegrator = (rates: Rates, tolerance: Tolerance) => Integrator;
/** The integrator that options name. */
export declare function integratorOf({ integrator }: SimulateOptions): OpenIntegrator;
/** Makes a run, one segment of constant forcing after another. All that changes in it is in `state`. */
export declare class Driver {
    private readonly model;
    private readonly options;
    private readonly parts;
    private readonly segments;
    private readonly sampler;
    private readonly followControls;
    private readonly watchFish;
    private readonly integrator;
    private readonly tolerance;
    /** Actions in the order of the run. */
    private readonly actions;
    private readonly outputs;
    /**
     * @param from goes on from the state of another run of this model and these options, between two segments, in
     *   place of `start`; it is changed, so give a copy where it is still wanted
     */
    constructor(model: Model, options: SimulateOptions, openIntegrator: OpenIntegrator, from?: RunState);
    /** Where the run stands. Between two segments a structured clone of it is a moment to go on from. */
    get state(): RunState;
    /** What the run has left behind since it was opened. */
    get record(): RunRecord;
    /** Does what is due at the start, and takes the first samples. What came before it has been done. */
    start(): void;
    /** Runs to the end of the segment and does what is due there. Returns whether the run goes on. */
    advance(): boolean;
    /**
     * Runs to the end of the segment, or to a time where that comes first, and leaves what is due there to `begin`.
     * Returns whether the water came to a mark.
     */
    carry(until?: number): boolean;
    /**
     * Does what is due between two segments and sets the regime of the next.
     * @param morning whether the morning of the day is still to be found, though no day begins
     */
    begin(atMark: boolean, morning?: boolean): void;
    /** Takes in an action to be done now, as if it had stood in the scenario, behind those of its instant and kind. */
    add(action: Action): void;
    /** Everything as it stands now. */
    look(): Sample;
    /** The run up to where it stands. */
    finish(): ResumableRun;
    /** Whether the run has come to its end or has broken off. */
    isOver(): boolean;
    /** Passes over the actions that came before now. */
    private skipDone;
    /** The next instant at which the forcing jumps. */
    private nextJump;
    /** Integrates to the end of the segment, with the samples within it and at its end. */
    private integrate;
    /** Begins a day, but for its actions. Returns whether something was harvested, booked as dead or done by a rule. */
    private beginDay;
    /** Does the actions that are due. Returns whether there were any. */
    private act;
    /** Sets the regime of the segment that starts at a time; true when the water did something. */
    private settle;
    /** How a run ends where the integrator gave up. */
    private brokenOff;
}
//# sourceMappingURL=driver.d.ts.map