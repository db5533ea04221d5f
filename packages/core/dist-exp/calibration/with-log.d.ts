import type { WaterLog } from '../log/water-log.js';
import type { Scenario } from '../scenario/scenario.js';
/** What was fed on days for which nothing is written: as on the last day with feed, the mean of those days, or nothing. */
export type UnloggedFeed = 'last' | 'mean' | 'none';
/** Lays what a log tells of feed and temperature over a scenario. */
export interface LogForcing {
    readonly over: (scenario: Scenario) => Scenario;
    /** What was assumed, one line each. */
    readonly notes: readonly string[];
}
/**
 * What a log tells of feed and temperature, up to a date, to be laid over a scenario or over the same with other
 * numbers. Rations that the file's own actions set for a cohort the log feeds do not count from the log's first feed on.
 */
export declare function logForcing(log: WaterLog, scenario: Scenario, until: string, unlogged: UnloggedFeed): LogForcing;
//# sourceMappingURL=with-log.d.ts.map