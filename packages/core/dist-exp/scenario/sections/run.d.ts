import * as z from 'zod';
import type { DailyValue } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';
/** The keys at the top of a file that are single values. */
export declare const headSchema: z.ZodObject<{
    version: z.ZodOptional<z.ZodLiteral<1>>;
    title: import("../file/values.js").Reads<string, string>;
    note: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    days: import("../file/values.js").Reads<number, number>;
    every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    'start-date': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    reservoir: import("../file/values.js").Reads<string, string>;
    seed: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
}, z.core.$strict>;
/** The section `climate`. */
export declare const climateSchema: z.ZodObject<{
    'water-temperature': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
        follows: "air";
        lag: number;
        start?: number | undefined;
    }>>;
    'air-temperature': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven>>;
    'carbon-dioxide': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven>>;
    light: z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
        cover?: number | undefined;
        shade?: import("./daily.js").DailyGiven | undefined;
        lamps?: {
            hours: import("./daily.js").DailyGiven;
            level: import("./daily.js").DailyGiven;
        } | undefined;
        outdoors?: import("./daily.js").DailyGiven | undefined;
        radiation?: import("./daily.js").DailyGiven | undefined;
        latitude?: number | undefined;
        sunshine?: import("./daily.js").DailyGiven | undefined;
    }>>;
    altitude: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    et0: import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
        weather: string;
        latitude: number;
        columns: {
            high: import("./weather.js").ColumnGiven;
            low: import("./weather.js").ColumnGiven;
            'dew-point'?: import("./weather.js").ColumnGiven | undefined;
            'humidity-high'?: import("./weather.js").ColumnGiven | undefined;
            'humidity-low'?: import("./weather.js").ColumnGiven | undefined;
            humidity?: import("./weather.js").ColumnGiven | undefined;
            radiation?: import("./weather.js").ColumnGiven | undefined;
            sunshine?: import("./weather.js").ColumnGiven | undefined;
            wind?: import("./weather.js").ColumnGiven | undefined;
        };
        method?: "penman-monteith" | "hargreaves" | undefined;
        altitude?: number | undefined;
        coastal?: boolean | undefined;
        'wind-height'?: number | undefined;
    }, unknown>;
    'greenhouse-factor': z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
}, z.core.$strict>;
/** Length, clock and weather of the run: what every other section is read against. */
export interface RunFrame {
    readonly title: string;
    readonly note: string;
    readonly days: number;
    readonly every: number;
    readonly startDate: string;
    /** Seed of whatever is drawn in the run. */
    readonly seed: number;
    /** Name of the reservoir as written; whether there is such a vessel is seen later. */
    readonly reservoir: string | undefined;
    /** Moments must come before this day; later than `days` where the run was cut short. */
    readonly lastDay: number;
    readonly waterTemperature: DailyValue | undefined;
    readonly air: DailyValue | undefined;
    /** Air that water may follow: that of the crops, or of the weather file. */
    readonly outside: DailyValue | undefined;
    readonly et0: DailyValue;
    /** On the crops, mol m-2 d-1; undefined where there are none and none is written. */
    readonly light: DailyValue | undefined;
    readonly carbonDioxide: DailyValue | undefined;
    /** Height above the sea, m. */
    readonly altitude: number;
}
/** Days since 1970-01-01 of the first day of a frame. */
export declare function firstDay(frame: RunFrame): number;
/**
 * Reads the head of a file and its climate. Faulty values are replaced by harmless ones so that the
 * rest can still be read; the faults are kept by the reader.
 */
export declare function readRun(reader: ScenarioReader, over: {
    readonly days?: number;
}): RunFrame;
//# sourceMappingURL=run.d.ts.map