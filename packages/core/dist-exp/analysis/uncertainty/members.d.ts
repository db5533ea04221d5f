import type { TableRow } from '../../library/table-row.js';
import type { PlacedLimit } from '../../result/limit-check.js';
import type { Run } from '../../run/run.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
import { type Condition } from '../measures/condition.js';
import { type Measure } from '../measures/measure.js';
/** Measures and conditions of every run, as text: see `measureOf` and `conditionOf`. */
export interface Questions {
    readonly measures: readonly string[];
    readonly conditions: readonly string[];
}
/** What an ensemble is about, as plain data. */
export interface Outline {
    readonly title: string;
    readonly measures: readonly Pick<Measure, 'text' | 'unit'>[];
    readonly conditions: readonly Pick<Condition, 'text' | 'unit'>[];
    /** Every number with a range that reading, running and judging used, sorted by id. */
    readonly rows: readonly TableRow[];
    readonly series: readonly {
        readonly name: string;
        readonly unit: string;
    }[];
    readonly limits: readonly PlacedLimit[];
    /** Output times of a whole run, d. */
    readonly times: readonly number[];
    /** Hash of the scenario as a run's manifest gives it: tells of which run these are the bands. */
    readonly scenario: string;
    /** Hash of the system, the version, the tolerance and the numbers drawn. */
    readonly hash: string;
}
/** What draws are made around: a system run once with the numbers of the tables as they stand. */
export interface Basis extends Outline {
    readonly run: Run;
    /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
    readonly notes: readonly string[];
    readonly measures: readonly Measure[];
    readonly conditions: readonly Condition[];
}
/** The plain part of a basis, to be saved with what was accumulated. */
export declare function outlineOf(basis: Basis): Outline;
/**
 * Runs a system once with the numbers as they stand, to see which of them it uses and what can be measured of it.
 * A number that only other draws would use (a process that never works here) is not drawn.
 *
 * Throws InputError with the faults of the measures and conditions.
 * @param options relative `tolerance` of the integration, and where they were written, for messages
 */
export declare function basisOf(open: OpenScenario, questions: Questions, options?: {
    readonly tolerance?: number;
    readonly where?: {
        measures?: string;
        conditions?: string;
    };
}): Basis;
/** What one number of a run is, or why it has none. */
export interface Answer {
    /** NaN where the run has no answer. */
    readonly value: number;
    readonly reason?: string;
}
/** What an ensemble takes from one member: a whole run, or why it failed. Holds no more than plain data. */
export type MemberOutcome = {
    readonly kind: 'done';
    /** Series after series, one value for each output time. */
    readonly series: Float64Array;
    /** For each limit: whether judged (1 or 0), when first passed (NaN: never), how long in all. */
    readonly limits: Float64Array;
    readonly measures: readonly Answer[];
    /** Margins, and beside them whether they hold. */
    readonly conditions: readonly (Answer & {
        readonly holds: boolean;
    })[];
} | {
    readonly kind: 'failed';
    readonly reason: string;
};
/** Numbers taken of a limit. */
export declare const LIMIT_NUMBERS = 3;
/**
 * Takes from a run what an ensemble needs of it.
 * @param allocate gives the array for so many numbers of the series; default: a new one
 */
export declare function memberOf(run: Run, measures: readonly Measure[], conditions: readonly Condition[], allocate?: (size: number) => Float64Array): MemberOutcome;
//# sourceMappingURL=members.d.ts.map