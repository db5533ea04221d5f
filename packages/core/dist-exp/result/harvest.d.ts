import type { Run } from '../run/run.js';
/** What was harvested in one month of the calendar, `yyyy-mm`: its `mass`, g fresh of a crop, or g of fish. */
export interface MonthlyYield {
    readonly month: string;
    readonly mass: number;
}
/** What one planting gave in a run: its plants, or of a crop that bears fruit that alone. */
export interface CropYield {
    readonly planting: string;
    readonly crop: string;
    /** g. */
    readonly dry: number;
    /** g; absent where the tables do not say how dry the crop is. */
    readonly fresh?: number;
    /** Plants cut or pulled, where the tables say how many stand on a square metre; not of crops picked or cut to grow again. */
    readonly plants?: number;
    readonly months: readonly MonthlyYield[];
}
/** What one cohort gave in a run: the `number` of fish taken out alive. */
export interface FishYield {
    readonly cohort: string;
    readonly species: string;
    readonly number: number;
    /** g. */
    readonly mass: number;
    readonly months: readonly MonthlyYield[];
}
/** Everything harvested in a run, and what it took. */
export interface Harvest {
    readonly crops: readonly CropYield[];
    readonly fish: readonly FishYield[];
    /** Of all crops, g fresh. */
    readonly fresh: number;
    /** Planted area, m2. */
    readonly area: number;
    /** Feed given, g. */
    readonly feed: number;
    /** Water taken in from outside, m3. */
    readonly water: number;
}
/** g of feed given in a run, eaten or not. */
export declare function feedGiven({ model, samples }: Run): number;
/** m3 of water taken in through the float valve. */
export declare function waterTaken({ model, samples }: Run): number;
/**
 * What a run harvested: crops by planting and month, fish by cohort, and feed and water beside them. A month is that of
 * the last output before, so with an output step of days some of it may stand a few days early. Fresh mass is the dry
 * mass over the dry share of the tables.
 */
export declare function harvestOf(run: Run): Harvest;
//# sourceMappingURL=harvest.d.ts.map