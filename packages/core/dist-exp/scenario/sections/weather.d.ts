import * as z from 'zod';
import { type Dimension } from '../../base/units.js';
import type { ScenarioReader } from './scenario-reader.js';
import { type Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import type { DailyValue } from '../scenario.js';
/** A column of a CSV file, with the unit of its plain numbers and what they measure. */
export interface ColumnGiven {
    readonly column: string;
    readonly unit: string;
    readonly dimension: Dimension;
}
/** Reference evapotranspiration worked out from a file of daily weather. */
export declare const weatherSchema: z.ZodObject<{
    weather: Reads<string, string>;
    method: z.ZodOptional<Reads<"penman-monteith" | "hargreaves", "penman-monteith" | "hargreaves">>;
    latitude: Reads<number, number>;
    altitude: z.ZodOptional<Reads<number, string>>;
    coastal: z.ZodOptional<Reads<boolean, boolean>>;
    'wind-height': z.ZodOptional<Reads<number, string>>;
    columns: z.ZodObject<{
        high: Reads<ColumnGiven>;
        low: Reads<ColumnGiven>;
        'dew-point': z.ZodOptional<Reads<ColumnGiven>>;
        'humidity-high': z.ZodOptional<Reads<ColumnGiven>>;
        'humidity-low': z.ZodOptional<Reads<ColumnGiven>>;
        humidity: z.ZodOptional<Reads<ColumnGiven>>;
        radiation: z.ZodOptional<Reads<ColumnGiven>>;
        sunshine: z.ZodOptional<Reads<ColumnGiven>>;
        wind: z.ZodOptional<Reads<ColumnGiven>>;
    }, z.core.$strict>;
}, z.core.$strict>;
/** It as written, still without the file. */
export type WeatherGiven = ReturnType<typeof weatherSchema.parse>;
/** What a file of daily weather gives. */
export interface WeatherReading {
    /** Reference evapotranspiration outdoors, m d-1. */
    readonly et0: DailyValue;
    /** Mean of the highest and lowest air temperature, degC. */
    readonly air: DailyValue;
    /** Solar radiation, measured or estimated by FAO-56, MJ m-2 d-1. */
    readonly radiation: DailyValue;
}
/**
 * Reference evapotranspiration of each day from a weather file, by FAO-56 Penman-Monteith with its rules
 * for missing data (what they assumed is noted) or by Hargreaves. Evapotranspiration below 0 (dew) counts
 * as 0, and is noted too: Leat brings no dew into the water.
 */
export declare function readWeather(reader: ScenarioReader, path: Path, given: WeatherGiven, { startDate, days }: {
    readonly startDate: string;
    readonly days: number;
}): WeatherReading | undefined;
//# sourceMappingURL=weather.d.ts.map