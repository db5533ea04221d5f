import * as z from 'zod';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import { type Reads } from '../file/values.js';
import type { Vessel } from '../scenario.js';
import type { RunFrame } from './run.js';
/** One vessel of `vessels`. */
export declare const vesselSchema: z.ZodObject<{
    kind: Reads<"fish-tank" | "settler" | "screen" | "biofilter" | "media-bed" | "raft-bed" | "channel" | "sump" | "vessel", "fish-tank" | "settler" | "screen" | "biofilter" | "media-bed" | "raft-bed" | "channel" | "sump" | "vessel">;
    volume: Reads<number, string>;
    area: z.ZodOptional<Reads<number, string>>;
    media: z.ZodOptional<z.ZodObject<{
        type: Reads<string, string>;
        volume: Reads<number, string>;
    }, z.core.$strict>>;
    surface: z.ZodOptional<Reads<number, string>>;
    floor: z.ZodOptional<Reads<number, string>>;
    open: z.ZodOptional<Reads<number, string>>;
    covered: z.ZodOptional<Reads<number, string>>;
    aeration: z.ZodOptional<z.ZodUnion<readonly [Reads<number>, z.ZodObject<{
        rate: Reads<number>;
        device: z.ZodOptional<Reads<string, string>>;
    }, z.core.$strict>]>>;
    capture: z.ZodOptional<Reads<number, string | number>>;
    temperature: z.ZodOptional<Reads<import("./daily.js").DailyGiven | {
        follows: "air";
        lag: number;
        start?: number | undefined;
    }>>;
    leak: z.ZodOptional<Reads<number, string>>;
    exchange: z.ZodOptional<Reads<number, string>>;
    drain: z.ZodOptional<z.ZodObject<{
        rate: Reads<number, string>;
        to: Reads<number, string>;
    }, z.core.$strict>>;
    flood: z.ZodOptional<z.ZodObject<{
        drained: Reads<number, string>;
        cycles: Reads<number, string>;
    }, z.core.$strict>>;
    lime: z.ZodOptional<z.ZodObject<{
        kind: Reads<string, string>;
        mass: Reads<number, string>;
    }, z.core.$strict>>;
}, z.core.$strict>;
/** Reads the section `vessels`. */
export declare function readVessels(reader: ScenarioReader, frame: RunFrame): Named<Vessel>;
//# sourceMappingURL=vessels.d.ts.map