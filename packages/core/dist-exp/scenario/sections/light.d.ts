import type { Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import type { DailyValue } from '../scenario.js';
import { type Span } from '../value-on.js';
import { type DailyGiven } from './daily.js';
import type { ScenarioReader } from './scenario-reader.js';
declare const skySection: import("zod").ZodObject<{
    cover: import("zod").ZodOptional<Reads<number, string | number>>;
    shade: import("zod").ZodOptional<Reads<DailyGiven>>;
    lamps: import("zod").ZodOptional<import("zod").ZodObject<{
        hours: Reads<DailyGiven>;
        level: Reads<DailyGiven>;
    }, import("zod/v4/core").$strict>>;
    outdoors: import("zod").ZodOptional<Reads<DailyGiven>>;
    radiation: import("zod").ZodOptional<Reads<DailyGiven>>;
    latitude: import("zod").ZodOptional<Reads<number, number>>;
    sunshine: import("zod").ZodOptional<Reads<DailyGiven>>;
}, import("zod/v4/core").$strict>;
declare const overSection: import("zod").ZodObject<{
    cover: import("zod").ZodOptional<Reads<number, string | number>>;
    shade: import("zod").ZodOptional<Reads<DailyGiven>>;
    lamps: import("zod").ZodOptional<import("zod").ZodObject<{
        hours: Reads<DailyGiven>;
        level: Reads<DailyGiven>;
    }, import("zod/v4/core").$strict>>;
}, import("zod/v4/core").$strict>;
/** Light under what stands over a system, as written. */
type SkyGiven = ReturnType<typeof skySection.parse>;
type OverGiven = ReturnType<typeof overSection.parse>;
/** The key `light` of the climate: a daily value, or how it comes down from the sky. */
export declare const skyLight: Reads<SkyGiven | DailyGiven>;
/** The key `light` of a planting: a daily value in place of that of the climate, or what stands over it besides. */
export declare const ownLight: Reads<OverGiven | DailyGiven>;
/** Light on a crop, mol m-2 d-1, and the share of evapotranspiration that its shade cloth leaves. */
export interface CropLight {
    readonly light?: DailyValue;
    readonly shelter?: DailyValue;
}
/** What the light outdoors is worked out from. */
interface Sky extends Span {
    /** Solar radiation of the weather file, MJ m-2 d-1. */
    readonly radiation: DailyValue | undefined;
    /** Whether evapotranspiration is said to be that under cover. */
    readonly underCover: boolean;
}
/**
 * Light on the crops of a system, mol m-2 d-1: as written, or from the sky, the weather file or the tables, through cover
 * and cloth, with lamps. Where nothing is written, what was assumed is noted.
 */
export declare function readSkyLight(reader: ScenarioReader, given: SkyGiven | DailyGiven | undefined, sky: Sky): CropLight;
/** Light on one planting where it has its own: in place of that of the climate, or through what stands over it besides. */
export declare function readOwnLight(reader: ScenarioReader, path: Path, given: OverGiven | DailyGiven | undefined, above: DailyValue | undefined, span: Span): CropLight;
export {};
//# sourceMappingURL=light.d.ts.map