import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import type { SourceWater } from '../scenario.js';
import type { RunFrame } from './run.js';
/** One water of `waters`. */
export declare const waterSchema: import("zod").ZodObject<{
    like: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
    ammonia: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    nitrite: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    nitrate: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    alkalinity: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    pH: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
    oxygen: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    chloride: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    calcium: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
}, import("zod/v4/core").$strict>;
/** Water in a vessel at the start. */
export declare const startWaterSchema: import("zod").ZodObject<{
    solids: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    like: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
    ammonia: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    nitrite: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    nitrate: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    alkalinity: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    pH: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
    oxygen: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    chloride: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    calcium: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
}, import("zod/v4/core").$strict>;
/** What is in water, apart from its name. */
export type Quality = Omit<SourceWater, 'name'>;
/** Water as written: any of its values may be left to `like` or to a default. */
export interface QualityGiven {
    readonly like?: string | undefined;
    readonly ammonia?: number | undefined;
    readonly nitrite?: number | undefined;
    readonly nitrate?: number | undefined;
    readonly alkalinity?: number | undefined;
    readonly pH?: number | undefined;
    readonly oxygen?: number | undefined;
    readonly chloride?: number | undefined;
    readonly calcium?: number | undefined;
}
/** Where water is taken to be: its `temperature`, degC, and the pressure of the air, atm. */
interface WaterPlace {
    readonly temperature: number;
    readonly pressure: number;
}
/**
 * Completes water as written. What is not given is that of `like` (a water of the library, or one of
 * `others`); without it ammonia and nitrite are none, oxygen is at saturation, and nitrate, alkalinity,
 * pH and chloride must be given, and calcium is a share of alkalinity. Inorganic carbon follows from alkalinity and pH
 * at `temperature`.
 */
export declare function completeQuality(reader: ScenarioReader, path: Path, given: QualityGiven, { temperature, pressure }: WaterPlace, others: Named<SourceWater>): Quality | undefined;
/** Reads the section `waters`. */
export declare function readWaters(reader: ScenarioReader, frame: RunFrame): Named<SourceWater>;
export {};
//# sourceMappingURL=waters.d.ts.map