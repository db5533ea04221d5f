import type { Model } from '../model/model.js';
import { type WaterNetwork } from './water-network.js';
/** What is reached after so many days if nothing changes: a volume in a vessel or the rain tank, the end of a ration. */
type Mark = {
    readonly kind: 'vessel';
    readonly after: number;
    readonly vessel: number;
    readonly volume: number;
} | {
    readonly kind: 'rain-tank';
    readonly after: number;
    readonly volume: number;
} | {
    readonly kind: 'ration';
    readonly after: number;
    readonly source: number;
};
/** Something the water did, for the event log. */
export interface WaterEvent {
    readonly kind: 'pump-trip' | 'pump-restart' | 'dry' | 'wet' | 'rain-tank-empty' | 'cap-reached';
    /** Pump, vessel, `rain-tank` or the name of the water whose cap is reached. */
    readonly place: string;
}
/** Where the water of a run is and how it runs now. Plain data. */
export interface WaterState {
    /** Of each vessel, m3, and how it changes, m3 d-1. */
    readonly volume: Float64Array;
    readonly slope: Float64Array;
    /** Of each stream, m3 d-1, and what it carried since the start, m3. */
    readonly flow: Float64Array;
    readonly carried: Float64Array;
    /** Water in the rain tank, m3, and how it changes, m3 d-1. */
    rain: number;
    rainSlope: number;
    /** Water that ran over the edge of the rain tank since the start, m3, and how fast it does, m3 d-1. */
    spilled: number;
    spillSlope: number;
    /** Whether each pump has sucked air and stands still. */
    readonly tripped: boolean[];
    /** Whether each vessel has run dry. */
    readonly parched: boolean[];
    /** What each top-up source gave on this day and in this week, m3. */
    readonly spent: number[];
    readonly spentInWeek: number[];
    /** Most that each may give on a day and in a week, m3. */
    caps: readonly number[];
    weeklyCaps: readonly number[];
    /** What the water comes to next. */
    mark: Mark | undefined;
}
/** What the forcing asks of the water. */
interface Wanted {
    /** Whether each pump is switched on (timer and actions). */
    readonly pumps: readonly boolean[];
    /** Evaporation of each vessel and transpiration of each planting, m3 d-1. */
    readonly evaporation: ArrayLike<number>;
    readonly transpiration: ArrayLike<number>;
    /** Daily cap of each top-up source, m3; 0 when stopped. */
    readonly caps: readonly number[];
    /** Weekly cap of each top-up source, m3. */
    readonly weeklyCaps: readonly number[];
    /** Rain running into the rain tank, m3 d-1. */
    readonly rain: number;
}
/** The water of a scenario at its start: nothing runs. */
export declare function startWater({ scenario, streams }: Model): WaterState;
/**
 * Water by itself. Within a segment every flow is constant, so volumes run on straight lines and the
 * next mark (standpipe, pump inlet, float, empty tank, spent ration) is reached at a time known
 * exactly. A vessel gives by gravity what it receives less what it loses; one below its standpipe
 * fills first; the reservoir takes all change of level.
 */
export declare class Hydraulics {
    private readonly network;
    readonly water: WaterState;
    /** What has come into each vessel so far, m3 d-1, while flows are found. */
    private readonly inflow;
    /** What a mark that was reached since the flows were last found has to say. */
    private readonly reached;
    constructor(network: WaterNetwork, water: WaterState);
    /** Sets what is wanted for the segment that begins; finds all flows. Returns what changed state. */
    settle(wanted: Wanted): readonly WaterEvent[];
    /** Time until the next mark, d (Infinity: none). */
    untilMark(): number;
    /** Moves on by so many days, at most `untilMark()`. */
    advance(days: number): void;
    /** A new day: daily rations are whole again; on days 0, 7, 14 ... weekly ones too. */
    newDay(day: number): void;
    /** Pours water into the rain tank, m3; what does not fit runs over. Returns what stays. */
    fillRainTank(poured: number): number;
    private near;
    private atOrBelow;
    private atOrAbove;
    private switchPumps;
    /** Finds what leaves a vessel by what enters it, and how its volume changes. */
    private settleVessel;
    /** Lets out of a vessel by gravity what it cannot hold of what it gains, m3 d-1. */
    private release;
    /** What a float at its level lets in from the sources in turn, where the reservoir else gains so much, m3 d-1. */
    private topUp;
    /** What a source may still give in its day and week, m3. */
    private rationLeft;
    private nextMark;
    /** The nearer of a mark and a level of a vessel. */
    private nearerLevel;
    /** At a mark the level is the mark itself, not the mark and a rounding. */
    private reach;
    /** The nearer cap of a source is reached: it is spent to the last drop, not but for a rounding. */
    private spendAll;
}
/** Opens the water of a model; it moves the water given, or that of the start. */
export declare function openHydraulics(model: Model, water?: WaterState): Hydraulics;
export {};
//# sourceMappingURL=hydraulics.d.ts.map