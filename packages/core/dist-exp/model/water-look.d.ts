import type { Model } from './model.js';
import type { Regime } from './model.js';
/** Where the search for the hydrogen ion of each vessel begins. Plain data; it decides the last places of a root. */
export interface PhMemory {
    /** The last root, mol m-3. */
    readonly hydrogen: Float64Array;
    /** Where partials were last taken: TAN, alkalinity, carbon and root. */
    readonly origin: Float64Array;
    /** Partials of the root there, by the first three. */
    readonly slope: Float64Array;
}
/** What rates read at one point (t, y). All arrays are made once. */
export interface WaterLook {
    /** Values of all variables: concentrations, amounts, then `DERIVED` values for each vessel. */
    readonly v: Float64Array;
    readonly volume: Float64Array;
    readonly perVolume: Float64Array;
    readonly memory: PhMemory;
    /** As `speciate` fills it, for each vessel; after `open` only. */
    readonly speciation: Float64Array;
    /** Fills v, volume and perVolume. */
    look(t: number, y: Float64Array): void;
    /** Fills the partials of chemistry at the point looked at last, and predicts from there in later looks. */
    open(): void;
}
/**
 * Opens the water of a model.
 * @param wantsPh whether a rate reads the pH itself, and not the hydrogen ion
 */
export declare function openWaterLook(model: Model, regime: Regime, wantsPh: boolean): WaterLook;
//# sourceMappingURL=water-look.d.ts.map