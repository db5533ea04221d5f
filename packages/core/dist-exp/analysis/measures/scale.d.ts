import type { Fault } from '../../base/faults.js';
import { type Dimension } from '../../base/units.js';
import type { Parameters } from '../../library/parameters.js';
import type { Model } from '../../model/model.js';
import type { LimitResult } from '../../result/limits.js';
import type { Run } from '../../run/run.js';
/** What the values of a measure are counted in. */
export interface Scale {
    /** As shown, such as `mg N/L`. */
    readonly unit: string;
    /** What else values may be written in; absent: only in `unit`. */
    readonly dimension?: Dimension;
    /** Whether values are differences, which may be below zero. */
    readonly difference?: boolean;
}
/** The scale of a series that is named in a measure, or what is wrong with the name. */
export declare function scaleOfWord(name: string | undefined, model: Model): Scale | Fault;
/** What a measure is held against: a value, or a number of the tables as a run has it. */
export type Level = (parameters: Parameters) => number;
/**
 * Reads `VALUE[ UNIT]`, or the id of a number of the tables such as `fish.nile-tilapia.limit-nitrite`.
 * @param known the numbers there are
 * @returns the level, or what is wrong with it
 */
export declare function levelOf(text: string, scale: Scale, known: Parameters): Level | Fault;
/** A measure without its text, or all that is wrong with it. */
export type MeasureReading = (Scale & {
    of(run: Run): number;
}) | readonly Fault[];
/** A condition without its text. */
export interface ConditionReading {
    /** Of the margin: that of the measure, or 1 for a share of a limit. */
    readonly unit: string;
    /**
     * Judges a run. Throws NoAnswerError where the run broke off or cannot be judged.
     * @param limits of the run, where they are at hand
     */
    judge(run: Run, limits?: readonly LimitResult[]): Judgement;
}
/** How a run stands to a condition. */
export interface Judgement {
    /** How far the run is from not holding: above 0 holds, below 0 does not. */
    readonly margin: number;
    /** Whether it holds: margin > 0, and for limits also 0 (a limit reached is not passed). */
    readonly holds: boolean;
}
//# sourceMappingURL=scale.d.ts.map