import type { Run, RunEvent } from '../run/run.js';
/** A pump that sucked air: how many `times`, when `first` (d), and how long in `total` (d). */
export interface StoppedPump {
    readonly pump: string;
    readonly times: number;
    readonly first: number;
    readonly total: number;
}
/** Whether there was water enough. */
export interface WaterVerdict {
    /** `dry`: a vessel ran dry; `pump`: a pump sucked air; `short`: the reservoir stood below its float valve. */
    readonly state: 'dry' | 'pump' | 'short' | 'enough';
    /** Days on which the reservoir stood below its float valve, by outputs. */
    readonly lowDays: number;
    /** The first of them, d. */
    readonly lowFirst?: number;
    /** Least water in the reservoir over the volume at its float valve; absent without a valve. */
    readonly lowest?: number;
    /** Taken in through the float valve, mean m3/d. */
    readonly perDay: number;
    /** d: when the rain tank first ran empty. */
    readonly rainTankEmpty?: number;
    /** Days on which a source had given all that its cap allows. */
    readonly capDays: number;
    /** The first of them, d. */
    readonly capFirst?: number;
    readonly pumps: readonly StoppedPump[];
    /** Vessels that ran dry, the first at the head. */
    readonly dry: readonly string[];
    /** When the first ran dry, d. */
    readonly dryFirst?: number;
    /** What was first amiss with the water, where it was short or worse. */
    readonly first?: RunEvent;
}
/** Whether a run had water enough, from what its water did. */
export declare function waterVerdict(run: Run): WaterVerdict;
//# sourceMappingURL=water-verdict.d.ts.map