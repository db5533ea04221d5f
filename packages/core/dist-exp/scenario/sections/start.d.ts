import * as z from 'zod';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import { type Reads } from '../file/values.js';
import type { SavedState } from '../saved-state.js';
import type { Cohort, Planting, SourceWater, StartVessel, TopUp, Vessel } from '../scenario.js';
import type { RunFrame } from './run.js';
/** Biofilm at the start: grown in, new, a share of grown in, or each group as a share of the room. */
type BiofilmGiven = {
    readonly kind: 'uncycled';
} | {
    readonly kind: 'cycled';
    readonly share: number;
} | {
    readonly kind: 'shares';
    readonly aob: number;
    readonly nob: number;
};
/** What one vessel holds at the start, where it differs. */
export declare const startVesselSchema: z.ZodObject<{
    biofilm: z.ZodOptional<Reads<BiofilmGiven>>;
    'grown-at': z.ZodOptional<Reads<number, number>>;
    water: z.ZodOptional<z.ZodObject<{
        solids: z.ZodOptional<Reads<number, string>>;
        like: z.ZodOptional<Reads<string, string>>;
        ammonia: z.ZodOptional<Reads<number, string>>;
        nitrite: z.ZodOptional<Reads<number, string>>;
        nitrate: z.ZodOptional<Reads<number, string>>;
        alkalinity: z.ZodOptional<Reads<number, string>>;
        pH: z.ZodOptional<Reads<number, number>>;
        oxygen: z.ZodOptional<Reads<number, string>>;
        chloride: z.ZodOptional<Reads<number, string>>;
        calcium: z.ZodOptional<Reads<number, string>>;
    }, z.core.$strict>>;
    settled: z.ZodOptional<Reads<number, string>>;
    volume: z.ZodOptional<Reads<number, string>>;
}, z.core.$strict>;
/** The section `start` of a run that may go on from a saved state. */
export declare const goingOnSchema: z.ZodObject<{
    'grown-at': z.ZodOptional<Reads<number, number>>;
    saved: z.ZodOptional<Reads<string, string>>;
    day: z.ZodOptional<Reads<number, number>>;
    vessels: z.ZodOptional<z.ZodUnknown>;
    biofilm: z.ZodOptional<Reads<BiofilmGiven>>;
    water: z.ZodOptional<z.ZodObject<{
        solids: z.ZodOptional<Reads<number, string>>;
        like: z.ZodOptional<Reads<string, string>>;
        ammonia: z.ZodOptional<Reads<number, string>>;
        nitrite: z.ZodOptional<Reads<number, string>>;
        nitrate: z.ZodOptional<Reads<number, string>>;
        alkalinity: z.ZodOptional<Reads<number, string>>;
        pH: z.ZodOptional<Reads<number, number>>;
        oxygen: z.ZodOptional<Reads<number, string>>;
        chloride: z.ZodOptional<Reads<number, string>>;
        calcium: z.ZodOptional<Reads<number, string>>;
    }, z.core.$strict>>;
}, z.core.$strict>;
/** One entry of `parameters`: a number, in the unit of its table, with or without a range. */
export declare const parameterSchema: z.ZodUnion<readonly [Reads<number, number>, z.ZodObject<{
    value: Reads<number, number>;
    low: z.ZodOptional<Reads<number, number>>;
    high: z.ZodOptional<Reads<number, number>>;
}, z.core.$strict>]>;
/** What the readers of other sections have found. */
export interface StartContext {
    readonly frame: RunFrame;
    readonly vessels: Named<Vessel>;
    readonly waters: Named<SourceWater>;
    readonly topUp: TopUp | undefined;
    readonly cohorts: Named<Cohort>;
    readonly plantings: Named<Planting>;
}
/** How a run begins. */
export interface Start {
    readonly start: readonly StartVessel[];
    readonly saved?: SavedState;
}
/** Reads the section `start` and gives the state of every vessel. */
export declare function readStart(reader: ScenarioReader, context: StartContext): Start;
export {};
//# sourceMappingURL=start.d.ts.map