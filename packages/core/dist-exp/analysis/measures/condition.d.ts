import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import { type ConditionReading } from './scale.js';
/** Something that a whole run must do. */
export interface Condition extends ConditionReading {
    /** As written, one space between words. */
    readonly text: string;
    /** The margin of `judge`. Throws as it does. */
    margin(run: Run): number;
    /** The verdict of `judge`. Throws as it does. */
    holds(run: Run): boolean;
}
/**
 * Reads a condition, in words:
 *
 * - `MEASURE above|below VALUE`: see `measureOf`; VALUE is a number in the unit of the measure, one with a unit,
 *   or the id of a number of the tables, taken as the run has it
 * - `keeps LIMIT[@PLACE]`, such as `keeps fish.nile-tilapia.limit-nitrite`: a limit of `limitsOf`, with its own
 *   averaging time; `keeps limits`: all of them. The margin is a share of the limit.
 *
 * `>` and `<` may stand for above and below. Throws InputError with every fault.
 * @param where what to name in faults, such as an option
 */
export declare function conditionOf(text: string, model: Model, where?: string): Condition;
//# sourceMappingURL=condition.d.ts.map