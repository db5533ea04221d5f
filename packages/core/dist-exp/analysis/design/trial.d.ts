import type { Run } from '../../run/run.js';
import type { Condition } from '../measures/condition.js';
/** What the run at one `value` of what is varied came to. */
export interface Trial {
    readonly value: number;
    /** Whether every condition holds; never where there is no answer. */
    readonly holds: boolean;
    /** Margin of each condition: above 0 holds, below 0 does not; NaN where it has no answer. */
    readonly margins: readonly number[];
    /** Why there is no answer: the run broke off, or the value makes no system. */
    readonly broke?: string;
}
/**
 * Judges the run at one `value` of what is varied by every condition. A run that has no answer to one of them is a trial
 * that does not hold.
 */
export declare function judgeRun(run: Run, value: number, conditions: readonly Condition[]): Trial;
//# sourceMappingURL=trial.d.ts.map