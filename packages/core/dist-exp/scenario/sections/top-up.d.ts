import * as z from 'zod';
import { type Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import type { RainTank, SourceWater, TopUp, Vessel } from '../scenario.js';
import type { RunFrame } from './run.js';
/** The section `rain-tank`. */
export declare const rainTankSchema: z.ZodObject<{
    capacity: import("../file/values.js").Reads<number, string>;
    volume: import("../file/values.js").Reads<number, string>;
    roof: import("../file/values.js").Reads<number, string>;
    runoff: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    rain: import("../file/values.js").Reads<import("./daily.js").DailyGiven>;
    water: import("../file/values.js").Reads<string, string>;
}, z.core.$strict>;
/** The section `top-up`. */
export declare const topUpSchema: z.ZodObject<{
    level: import("../file/values.js").Reads<number, string>;
    rate: import("../file/values.js").Reads<number, string>;
    from: z.ZodArray<z.ZodUnion<readonly [import("../file/values.js").Reads<string, string>, z.ZodObject<{
        water: import("../file/values.js").Reads<string, string>;
        cap: z.ZodOptional<import("../file/values.js").Reads<import("./cap.js").Cap, string>>;
    }, z.core.$strict>]>>;
}, z.core.$strict>;
/** Top-up and the rain tank, where there are any. */
export interface Supply {
    readonly topUp?: TopUp;
    readonly rainTank?: RainTank;
}
/** Reads `top-up` and `rain-tank`. */
export declare function readSupply(reader: Reader, frame: RunFrame, waters: Named<SourceWater>, reservoir: Vessel | undefined): Supply;
//# sourceMappingURL=top-up.d.ts.map