import type { Fault } from '../base/faults.js';
/** Where the weather was measured. */
export interface WeatherSite {
    /** Degrees north; south is below 0. */
    readonly latitude: number;
    /** m above the sea. */
    readonly elevation: number;
    /** On or near a coast: decides how radiation is estimated from temperature. Default: inland. */
    readonly coastal?: boolean;
    /** Height of the wind meter above the ground, m. Default 2. */
    readonly windHeight?: number;
}
/** What was measured in one day; all but the temperatures may be missing. */
export interface WeatherDay {
    /** 1 on 1 January. */
    readonly dayOfYear: number;
    /** Highest air temperature, degC. */
    readonly high: number;
    /** Lowest air temperature, degC. */
    readonly low: number;
    /** degC. */
    readonly dewPoint?: number;
    /** Highest relative humidity, 0..1. */
    readonly humidityHigh?: number;
    /** Lowest relative humidity, 0..1. */
    readonly humidityLow?: number;
    /** Mean relative humidity, 0..1. */
    readonly humidity?: number;
    /** Solar radiation, MJ m-2 d-1. */
    readonly radiation?: number;
    /** Hours of bright sunshine. */
    readonly sunshine?: number;
    /** Mean wind at the height of the meter, m/s. */
    readonly wind?: number;
}
/** What cannot be true of a site and a day of weather, one fault a value; keys are those of the two types. */
export declare function weatherFaults(site: WeatherSite, day: WeatherDay): readonly Fault[];
//# sourceMappingURL=weather-day.d.ts.map