import type { Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { type FlowReading } from '../checks/network.js';
import type { Vessel } from '../scenario.js';
/** One flow of `flows`: pumped (pump, rate) or by gravity (share). */
export declare const flowSchema: import("zod").ZodObject<{
    from: import("../file/values.js").Reads<string, string>;
    to: import("../file/values.js").Reads<string, string>;
    pump: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
    rate: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
}, import("zod/v4/core").$strict>;
/** Reads the section `flows`. */
export declare function readFlows(reader: Reader, vessels: Named<Vessel>, pumps: ReadonlyMap<string, unknown>): FlowReading;
//# sourceMappingURL=flows.d.ts.map