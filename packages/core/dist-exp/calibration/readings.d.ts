import type { LogReading, WaterLog } from '../log/water-log.js';
import type { Scenario } from '../scenario/scenario.js';
/** A reading held against a run. */
export interface Observation {
    readonly reading: LogReading;
    /** Place of its vessel among those of the system. */
    readonly vessel: number;
    /** d since the start of the run. */
    readonly time: number;
}
/** The readings that a run can be held against, and what was left out, one line each. */
export interface Observations {
    readonly all: readonly Observation[];
    readonly notes: readonly string[];
}
/** Days from the start of a scenario to a moment of its log. */
export declare function dayOf(scenario: Scenario, date: string): number;
/**
 * Readings of a log in the vessels of a system from its start up to a date, that date included. Temperatures are left
 * to the forcing.
 */
export declare function observationsOf(log: WaterLog, scenario: Scenario, until: string): Observations;
/** Hash of what was read of a log up to a date, that date included: intervals, feed and when they were. */
export declare function logHash({ readings, feed }: WaterLog, until: string): string;
//# sourceMappingURL=readings.d.ts.map