import * as z from 'zod';
import type { Named } from '../file/report.js';
import type { RunFrame } from './run.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import type { Cohort, Feed, Planting, Ration, Vessel } from '../scenario.js';
/** Feed given per day: a mass, a share of body mass, or a table of shares by mean mass. */
export declare const rationSchema: Reads<Ration>;
/** Number of fish where some are meant. */
export declare const fishCount: Reads<number, number>;
/** One cohort of `fish`. */
export declare const cohortSchema: z.ZodObject<{
    in: Reads<string, string>;
    species: Reads<string, string>;
    number: Reads<number, number>;
    mass: Reads<number, string>;
    ration: Reads<Ration>;
    feed: z.ZodOptional<Reads<string, string>>;
    protein: z.ZodOptional<Reads<number, string | number>>;
    'feed-conversion': z.ZodOptional<Reads<number, number>>;
    dead: z.ZodOptional<Reads<"left", "left">>;
    hours: z.ZodOptional<z.ZodPipe<z.ZodString, z.ZodTransform<{
        from: number;
        to: number;
    }, string>>>;
}, z.core.$strict>;
/** One planting of `plantings`. */
export declare const plantingSchema: z.ZodObject<{
    picks: z.ZodOptional<Reads<number, string>>;
    cut: z.ZodOptional<z.ZodObject<{
        every: Reads<number, string>;
        leave: z.ZodOptional<Reads<number, string | number>>;
    }, z.core.$strict>>;
    seedling: z.ZodOptional<Reads<number, string>>;
    light: z.ZodOptional<Reads<import("./daily.js").DailyGiven | {
        cover?: number | undefined;
        shade?: import("./daily.js").DailyGiven | undefined;
        lamps?: {
            hours: import("./daily.js").DailyGiven;
            level: import("./daily.js").DailyGiven;
        } | undefined;
    }>>;
    after: z.ZodOptional<Reads<"replant" | "empty", "replant" | "empty">>;
    start: z.ZodOptional<Reads<"empty" | "staggered" | "new", "empty" | "staggered" | "new">>;
    age: z.ZodOptional<Reads<number, string>>;
    from: z.ZodOptional<Reads<import("./times.js").When, string>>;
    until: z.ZodOptional<Reads<import("./times.js").When, string>>;
    in: Reads<string, string>;
    crop: Reads<string, string>;
    area: Reads<number, string>;
    cover: z.ZodOptional<Reads<number, string | number>>;
    batches: z.ZodOptional<Reads<number, number>>;
    harvest: z.ZodOptional<Reads<number, string>>;
}, z.core.$strict>;
/** A feed by its name in the library, by its protein, or both (the protein then replaces the library's). */
export declare function readFeed(reader: ScenarioReader, path: Path, given: {
    readonly feed?: string | undefined;
    readonly protein?: number | undefined;
}): Feed | undefined;
/** Reads the section `fish`. */
export declare function readCohorts(reader: ScenarioReader, vessels: Named<Vessel>): Named<Cohort>;
/** Reads the section `plantings`. */
export declare function readPlantings(reader: ScenarioReader, frame: RunFrame, vessels: Named<Vessel>): Named<Planting>;
//# sourceMappingURL=stock.d.ts.map