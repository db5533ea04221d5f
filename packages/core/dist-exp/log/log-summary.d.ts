import type { Measurable, Scenario } from '../scenario/scenario.js';
import type { WaterLog } from './water-log.js';
/** How a quantity was measured in a vessel; `lowest`, `median` and `highest` of the values in internal units. */
export interface LogCourse {
    readonly reads: Measurable;
    readonly vessel: string;
    /** Readings in all. */
    readonly count: number;
    /** Readings that only say less than, or more than. */
    readonly open: number;
    /** Longest time without a reading, d. */
    readonly gap: number;
    readonly lowest: number;
    readonly median: number;
    readonly highest: number;
}
/** What a log holds, and how it fits a system. */
export interface LogSummary {
    readonly courses: readonly LogCourse[];
    /** Days from the first date to the last, both counted. */
    readonly span: number;
    /** `grams` in all, and the number of `days` on which any was written down. */
    readonly feed: {
        readonly grams: number;
        readonly days: number;
    };
    /** Nitrogen in that feed at the protein of the system's feed, g; absent without a system. */
    readonly nitrogen?: number;
    /** What does not fit the system, one clause each; empty without a system. */
    readonly doubts: readonly string[];
}
/** What was measured how often, with its gaps; nitrogen that came with feed; what does not fit the system file. */
export declare function summaryOfLog(log: WaterLog, scenario?: Scenario): LogSummary;
//# sourceMappingURL=log-summary.d.ts.map