import type { Model } from '../model/model.js';
import type { Conditions } from '../processes/process.js';
/** Mass of the plants of a batch without fruit and their nitrogen, and mass of the fruit on them, g. */
export interface CropStand {
    readonly mass: number;
    readonly nitrogen: number;
    readonly fruit: number;
    /** Nitrogen of plants and of all fruit that they ever bore, g. */
    readonly taken: number;
}
/** When each batch was planted, and what follows from its age. */
export interface CropClock {
    /** Time of planting, d; NaN while bare. */
    readonly planted: Float64Array;
    /** What stands after growing undisturbed for so many days under fixed conditions. */
    stand(batch: number, age: number, conditions: Conditions): CropStand;
    /** Crop coefficient of a batch at a time, times its cover; 0 while bare. FAO-56: flat, rising, flat, falling. */
    coefficient(batch: number, time: number): number;
    /** Share of the growth of a batch that goes to fruit at a time. */
    bearing(batch: number, time: number): number;
    /** Whether a batch has reached its harvest age. */
    ripe(batch: number, time: number): boolean;
    /** Share of the fruit of a batch that is ripe and picked in the morning of a day; 0 on most days. */
    picked(batch: number, time: number): number;
    /** Share of the plants of a batch that is cut in the morning of a day, to grow again; 0 on most days. */
    cut(batch: number, time: number): number;
}
/**
 * Makes the clock of all batches of a model.
 * @param planted time of planting of each, d, kept by the caller; default: all bare
 */
export declare function openCropClock(model: Model, planted?: Float64Array): CropClock;
//# sourceMappingURL=crop-clock.d.ts.map