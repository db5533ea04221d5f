import type { Model, Regime } from '../model/model.js';
import type { Timer } from '../scenario/scenario.js';
import type { CropClock } from './crop-clock.js';
import { type Day } from './forcing.js';
import type { Hydraulics, WaterEvent } from './hydraulics.js';
import type { Operation } from './operation.js';
/** Whether a clock is in its on-phase; no clock is always on. On-phases are half-open [on, off). */
export declare function within(timer: Timer | undefined, time: number): boolean;
/** The next instant after a time at which a clock switches; Infinity without one. */
export declare function nextSwitch(timer: Timer | undefined, time: number): number;
/** What a segment of constant forcing is set from. */
interface Setting {
    readonly model: Model;
    readonly regime: Regime;
    readonly operation: Operation;
    readonly crops: CropClock;
    readonly hydraulics: Hydraulics;
    readonly day: Day;
}
/** Sets the forcing of one segment after another. */
export declare class Segments {
    private readonly setting;
    private readonly refresh;
    /** The water that each stream from outside was last set to bring. */
    private readonly sourceOf;
    private readonly aeration;
    private readonly inflow;
    private readonly ionsOf;
    private readonly open;
    private readonly covered;
    constructor(setting: Setting);
    /** The morning of a day: its weather, evapotranspiration by the ages of the crops at a time, rations and ions by y. */
    morning(weatherOf: number, time: number, y: Float64Array): void;
    /** Settles the water for the segment that starts at a time and sets its regime. Returns what the water did. */
    settle(time: number): readonly WaterEvent[];
    /** Sets the regime of the segment that starts at a time, with the water settled. */
    enter(time: number): void;
    /** The next instant at which a pump timer or the hours of feeding switch (Infinity: none). */
    nextSwitch(time: number): number;
    /** Finds what flows into each vessel, and what the streams from outside bring. */
    private bringWater;
}
export {};
//# sourceMappingURL=segments.d.ts.map