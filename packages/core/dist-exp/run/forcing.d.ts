import type { Model } from '../model/model.js';
import type { Regime } from '../model/model.js';
import type { Offer } from '../model/offer.js';
import type { Conditions } from '../processes/process.js';
/** What holds from the morning of a day on, until something is done: weather, evapotranspiration, rations. Plain data. */
export interface Day {
    /** Of the water and of the air at each vessel, degC. */
    readonly temperature: Float64Array;
    readonly air: Float64Array;
    /** Photosynthetic light on each planting, mol m-2 d-1. */
    readonly light: Float64Array;
    /** Share of the growth of each batch that goes to fruit. */
    readonly bearing: Float64Array;
    /** Carbon dioxide in the air, mol per mol; absent: that of open air. */
    carbonDioxide?: number;
    /** Ionic strength of each vessel that morning, mol L-1, held through the day. */
    readonly ionic: Float64Array;
    /** m d-1. */
    et0: number;
    /** Rain running into the rain tank, m3 d-1. */
    rain: number;
    /** Evaporation of each vessel and transpiration of each planting, m3 d-1. */
    readonly evaporation: Float64Array;
    readonly transpiration: Float64Array;
    /** Feed offered to each cohort. */
    readonly offered: Offer[];
}
/** A day with its weather, before anything else of it is worked out. */
export declare function openDay(model: Model, weatherOf: number): Day;
/** Sets the weather of a day. */
export declare function setWeather(model: Model, day: number, into: Day): void;
/** Sets the coefficients of a regime, but only of those instances whose conditions have changed. */
export declare function openCoefficients(model: Model, regime: Regime): (day: Day, aeration: ArrayLike<number>, inflow: ArrayLike<number>, offers: readonly Offer[], feeds: readonly string[], dosing: readonly boolean[]) => void;
/** Conditions at a place. */
export declare function conditionsAt(model: Model, index: number, day: Pick<Day, 'temperature' | 'air' | 'light' | 'bearing' | 'ionic' | 'carbonDioxide'>, aeration: number, inflow: number, batch: number, fed?: number, fedShare?: number): Conditions;
//# sourceMappingURL=forcing.d.ts.map