import type { Model, Regime } from '../../model/model.js';
import type { Conditions } from '../../processes/process.js';
import { type CropClock, type CropStand } from '../../run/crop-clock.js';
import { type Day } from '../../run/forcing.js';
import type { RateSystem } from '../../solve/contract.js';
/**
 * The stand of a batch that takes up as much nitrogen a day as it does in the mean from planting to harvest, grown
 * undisturbed: on the way up, before its uptake is greatest.
 */
export declare function meanStand(model: Model, crops: CropClock, batch: number, conditions: Conditions): CropStand;
/** A segment of constant forcing within a cycle. */
export interface CycleSegment {
    /** d from the start of the cycle. */
    readonly from: number;
    readonly to: number;
    readonly volume: Float64Array;
    readonly slope: Float64Array;
    readonly flow: Float64Array;
    readonly coefficients: readonly Float64Array[];
    /** Feed offered, evapotranspiration (m3 d-1) and water in the rain tank. */
    readonly fed: Float64Array;
    readonly rain: number;
}
/** Forcing that repeats itself: the rates of the model and one cycle of segments. */
export interface Cycle {
    readonly system: RateSystem;
    readonly regime: Regime;
    /** d. */
    readonly period: number;
    /** One segment where nothing changes within the cycle. */
    readonly segments: readonly CycleSegment[];
    readonly constant: boolean;
    /** State at the start of the scenario, spread over the volumes at the start of the cycle. */
    readonly start: Float64Array;
    readonly temperature: Float64Array;
    /** Ionic strength of each vessel, mol L-1, by which the constants of the regime were last set (`setIons`). */
    readonly ionic: Float64Array;
    /** The morning of the cycle. */
    readonly day: Day;
    /** What the water did on the way to the cycle, such as a pump that sucked air. */
    readonly events: readonly {
        readonly kind: string;
        readonly place: string;
    }[];
}
/** Puts a segment into force. */
export declare function enter(regime: Regime, segment: CycleSegment): void;
/**
 * Sets the ionic strength of a cycle, and with it the constants of acids and bases and the growth of crops, by a state at its start. Returns the
 * largest share by which one moved.
 */
export declare function setIons(model: Model, { regime, ionic, temperature, segments, day }: Cycle, y: Float64Array): number;
/**
 * The forcing of one day of weather, repeated: no actions, no rules, fish at their stock at the start, crops at their
 * age at the start or at the mean of their cycle. The water runs until its volumes repeat.
 * @throws InputError when the water never repeats itself, or pump timers do not within weeks
 */
export declare function openCycle(model: Model, weatherDay: number, cropsAre: 'mean' | 'as-at-start'): Cycle;
//# sourceMappingURL=cycle.d.ts.map