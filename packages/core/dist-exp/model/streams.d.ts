import type { Scenario } from '../scenario/scenario.js';
/** What makes a stream run. */
export declare const streamKinds: readonly ["pumped", "gravity", "top-up", "exchange", "leak", "overflow", "evaporation", "transpiration"];
export type StreamKind = (typeof streamKinds)[number];
/** A way that water takes: between vessels, in from a source, or out. */
export interface Stream {
    readonly id: string;
    readonly kind: StreamKind;
    /** Index of the vessel, or -1 for outside. */
    readonly from: number;
    /** The same where it goes. */
    readonly to: number;
    /** Account outside, where one end is outside. */
    readonly account?: 'source water' | 'discharge' | 'air';
    /** Name of the source water, for water that comes in. */
    readonly water?: string;
    /** Index in scenario.flows, topUp.sources or plantings, by kind. */
    readonly index: number;
    /** Whether what is dissolved goes with the water. */
    readonly carries: boolean;
}
/** All streams that a scenario can have, whether or not they run at a given time. */
export declare function layStreams(scenario: Scenario): readonly Stream[];
//# sourceMappingURL=streams.d.ts.map