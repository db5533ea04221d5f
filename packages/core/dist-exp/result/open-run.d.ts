import type { Model } from '../model/model.js';
import { type SimulateOptions } from '../run/driver.js';
import type { Outcome } from '../run/run.js';
import type { ResumableRun } from '../run/run-state.js';
import { type EndState } from '../run/saved.js';
import type { Action } from '../scenario/scenario.js';
/**
 * A run that goes on when it is told to, for programs that decide as it goes. It stops before anything is done that is
 * due where it stands, so that who reads it at a whole day reads the water of the morning, as rules do.
 */
export interface SteppedRun {
    /** Where it stands, d since the start. */
    readonly day: number;
    /** How it ended; undefined while it goes on. */
    readonly outcome: Outcome | undefined;
    /**
     * Runs to a time, d since the start, or to the end of the run where that comes first. Returns whether it goes on. Stops
     * at whole days change nothing: the run is that of `simulate` to the byte. A stop within a day ends a step of the
     * integrator there: the run is the same to the tolerance.
     * @throws RangeError for a time that has passed, and once the run was finished
     */
    advance(to: number): boolean;
    /**
     * Value now of a series by its name (`tan@tank`), in the unit of `seriesOf`. Means over an output step (`top-up@system`,
     * `discharge@system`, `dosed@tank`) are those since the last output time.
     * @throws InputError with the nearest name when there is no such series
     */
    read(name: string): number;
    /**
     * Does an action where the run stands: it is done as the run goes on, with what the scenario does at that instant, in
     * the order of `actionOrder`. The run is that of a scenario in which the action stood from the first.
     * @throws InputError with every fault of the action, each at its path (`action.cohort`); RangeError when the run is over
     */
    do(action: Action): void;
    /**
     * What stands in the system, to go on from in another run (`saved` of a scenario), before what is due where the run stands.
     * @throws RangeError while an action waits to be done there: it would be lost
     */
    state(): EndState;
    /** The run up to where it stands, as `simulate` gives it. Nothing can be done with the stepped run afterwards. */
    finish(): ResumableRun;
}
/**
 * Opens a run of a model, at its start. Any number of runs of one model may be open at once.
 * @param options as for `simulate`
 */
export declare function openRun(model: Model, options?: SimulateOptions): SteppedRun;
//# sourceMappingURL=open-run.d.ts.map