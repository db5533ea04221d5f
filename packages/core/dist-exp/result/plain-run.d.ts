import type { Extension } from '../model/own.js';
import type { ResumableRun } from '../run/run-state.js';
import type { Scenario } from '../scenario/scenario.js';
/** A run as plain data: what `postMessage` and `structuredClone` can carry. */
export interface PlainRun extends Omit<ResumableRun, 'model'> {
    readonly schema: 'leat-plain-run';
    readonly scenario: Scenario;
    /** Numbers that are others than the scenario makes them, such as drawn ones: id and value, in the unit of the row. */
    readonly numbers: readonly (readonly [id: string, value: number])[];
    /** Ids of the numbers that were read. */
    readonly used: readonly string[];
    /** Whether components or processes of a user's own were in it. */
    readonly extended: boolean;
}
/** A run without its model, which holds functions; `openPlainRun` makes it a run again, on the other side. */
export declare function plainRun(run: ResumableRun): PlainRun;
/**
 * The run that plain data were made of. Its scenario was checked when it ran, and is not checked again.
 * @param extension components and processes of the user's own, where there were any: functions are not carried
 * @throws RangeError where there were such and none are given
 */
export declare function openPlainRun(plain: PlainRun, extension?: Extension): ResumableRun;
//# sourceMappingURL=plain-run.d.ts.map