import type { TableRow } from '../../library/table-row.js';
import type { PlacedLimit } from '../../result/limit-check.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
import { type MemberNote, type Accumulator } from './accumulator.js';
import { type Basis, type MemberOutcome, type Outline, type Questions } from './members.js';
import { type Bands, type Summary } from './quantiles.js';
import { type Sampling } from './sampling.js';
/** The `median` and bands of one series, in `unit`, one entry for each output time. */
export interface SeriesBands {
    readonly name: string;
    readonly unit: string;
    readonly median: Float64Array;
    /** 25 % and 75 %. */
    readonly band50: readonly [Float64Array, Float64Array];
    /** 5 % and 95 %. */
    readonly band90: readonly [Float64Array, Float64Array];
    /** How far a quantile may be off at most, in `unit`; 0 for up to 128 members. */
    readonly resolution: number;
}
/** How the members stood to one limit. */
export interface LimitOdds extends PlacedLimit {
    /** Members that could be judged. */
    readonly judged: number;
    /** Those of them that passed the limit. */
    readonly passed: number;
    /** passed / judged; NaN where none was judged. */
    readonly probability: number;
    /** When first passed, d, over the members that passed it. */
    readonly first: Bands;
    /** How long in all, d, over the members that passed it. */
    readonly total: Bands;
}
/** One measure over all members. */
export interface MeasureSummary extends Summary {
    readonly text: string;
    readonly unit: string;
    /** The first member that had no answer, and why. */
    readonly unanswered: MemberNote | null;
}
/** A condition: its margin over the members, and how many hold it. */
export interface ConditionSummary extends MeasureSummary {
    /** Members that hold it. */
    readonly holds: number;
    /** holds / answered. */
    readonly share: number;
}
/** What an ensemble says. */
export interface EnsembleResult {
    readonly sampling: Sampling;
    /** Members that ran, failed ones included. */
    readonly ran: number;
    readonly failed: readonly MemberNote[];
    /** Numbers that were drawn. */
    readonly drawn: readonly TableRow[];
    /** Output times, d. */
    readonly times: readonly number[];
    readonly series: readonly SeriesBands[];
    readonly limits: readonly LimitOdds[];
    readonly measures: readonly MeasureSummary[];
    readonly conditions: readonly ConditionSummary[];
}
/** What an accumulator says of an ensemble, whole or not. */
export declare function ensembleResult(outline: Outline, sampling: Sampling, accumulator: Accumulator): EnsembleResult;
/**
 * Runs members of an ensemble by their number, 0 to N - 1, each on its own. Throws InputError for a sampling that cannot
 * be.
 * @param open the system, read
 * @param basis what is drawn, and the measures and conditions of each member, as `basisOf` gives it
 * @param sampling how members are drawn
 * @param options relative `tolerance` of the integration (default as for `simulate`), and `allocate`, which gives the array
 *   for so many numbers of the series of a member (default: a new one each)
 */
export declare function openMembers(open: OpenScenario, { rows, measures, conditions }: Pick<Basis, 'rows' | 'measures' | 'conditions'>, sampling: Sampling, { allocate, ...options }?: {
    readonly tolerance?: number;
    readonly allocate?: (size: number) => Float64Array;
}): (member: number) => MemberOutcome;
/**
 * An ensemble run in one go: members drawn from the ranges of every number that the system uses, bands of
 * every series, the odds of passing each limit, and every measure and condition. A member whose run breaks off is
 * counted and named, and in no band. `tolerance` is the relative one of the integration.
 * Throws InputError for a sampling, measures or conditions that cannot be.
 */
export declare function ensembleOf(open: OpenScenario, sampling: Sampling, questions?: Questions, options?: {
    readonly tolerance?: number;
}): EnsembleResult;
//# sourceMappingURL=ensemble.d.ts.map