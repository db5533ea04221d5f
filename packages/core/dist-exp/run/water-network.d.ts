import type { Model } from '../model/model.js';
import type { RainTank, TopUp, Vessel } from '../scenario/scenario.js';
/** A stream that a pump drives at a rate, m3 d-1, while it runs. */
interface PumpedStream {
    readonly stream: number;
    readonly pump: number;
    readonly from: number;
    readonly to: number;
    readonly rate: number;
}
/** A pump and the vessels it draws from, with the volumes at which it trips and starts again, m3. */
interface PumpLevels {
    readonly name: string;
    readonly draws: readonly {
        readonly vessel: number;
        readonly inlet: number;
        readonly restart: number;
    }[];
}
/** A vessel among the streams, each by its index, ascending. */
interface VesselStreams {
    readonly vessel: Vessel;
    /** Volume at the standpipe, and the volume that counts as dry, m3. */
    readonly full: number;
    readonly dry: number;
    /** Volumes at which something changes, whatever goes on elsewhere, m3. */
    readonly levels: readonly number[];
    readonly pumped: readonly number[];
    /** Exchange, leak, evaporation and transpiration; `planting` of the last. */
    readonly losses: readonly {
        readonly stream: number;
        readonly kind: 'exchange' | 'leak' | 'evaporation' | 'transpiration';
        readonly planting: number;
    }[];
    /** Shares of what leaves by gravity. */
    readonly gravity: readonly {
        readonly stream: number;
        readonly to: number;
        readonly share: number;
    }[];
    readonly overflows: readonly number[];
}
/** The water of a model as it is led: all that does not change in a run. */
export interface WaterNetwork {
    readonly vessels: readonly VesselStreams[];
    /** Vessels in an order in which gravity water only runs forward; the reservoir last, for it answers to all that returns. */
    readonly order: readonly number[];
    readonly reservoir: number;
    readonly pumps: readonly PumpLevels[];
    readonly pumped: readonly PumpedStream[];
    readonly valve: TopUp | undefined;
    /** Streams of the float valve, with the index of the source of each. */
    readonly topUps: readonly {
        readonly stream: number;
        readonly source: number;
    }[];
    readonly tank: RainTank | undefined;
    readonly streamCount: number;
}
/** Lays out the water of a model. */
export declare function layWater(model: Model): WaterNetwork;
export {};
//# sourceMappingURL=water-network.d.ts.map