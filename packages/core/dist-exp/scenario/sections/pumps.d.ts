import { type Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { type FlowReading } from '../checks/network.js';
import type { Pump, Vessel } from '../scenario.js';
/** One pump of `pumps`. */
export declare const pumpSchema: import("zod").ZodObject<{
    timer: import("zod").ZodOptional<import("zod").ZodObject<{
        on: import("../file/values.js").Reads<number, string>;
        off: import("../file/values.js").Reads<number, string>;
        offset: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, import("zod/v4/core").$strict>>;
    inlet: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    restart: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
}, import("zod/v4/core").$strict>;
type Given = ReturnType<typeof pumpSchema.parse>;
/** Pumps as written, before it is known what they draw from. */
export declare function parsePumps(reader: Reader): Named<Given>;
/** Completes the pumps by what they draw from. */
export declare function completePumps(reader: Reader, given: Named<Given>, flows: FlowReading, vessels: Named<Vessel>, reservoir: string | undefined): Named<Pump>;
export {};
//# sourceMappingURL=pumps.d.ts.map