import * as z from 'zod';
import type { Named } from '../file/report.js';
import type { Doser, Vessel } from '../scenario.js';
import { type Level } from './level.js';
import type { ScenarioReader } from './scenario-reader.js';
/** One doser of `control`. */
export declare const controlSchema: z.ZodObject<{
    hold: import("../file/values.js").Reads<"pH" | "alkalinity", "pH" | "alkalinity">;
    in: import("../file/values.js").Reads<string, string>;
    probe: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    at: import("../file/values.js").Reads<Level, Level>;
    with: z.ZodUnion<readonly [z.ZodString, z.ZodArray<z.ZodString>]>;
    band: z.ZodOptional<import("../file/values.js").Reads<Level, Level>>;
    most: import("../file/values.js").Reads<number, string>;
}, z.core.$strict>;
/** Reads the section `control`: dosers that hold pH or alkalinity. */
export declare function readControl(reader: ScenarioReader, vessels: Named<Vessel>): readonly Doser[];
//# sourceMappingURL=control.d.ts.map