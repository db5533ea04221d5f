import type { Run, RunEvent } from '../run/run.js';
import type { CauseOfDeath } from '../processes/kernels/hazard.js';
import { type FilterVerdict } from './filter-verdict.js';
import { type LimitResult } from './limits.js';
import { type Series } from './series.js';
import { type WaterVerdict } from './water-verdict.js';
/** A limit that was passed, as a verdict names it: of what, for whom, in which vessels, from when, how long, how far. */
export interface Trouble extends Pick<LimitResult, 'quantity' | 'direction' | 'value' | 'unit' | 'whom'> {
    /** Vessels, the one that was passed first at the head. */
    readonly places: readonly string[];
    /** d: when first passed. */
    readonly first: number;
    /** d: how long, in the worst vessel. */
    readonly total: number;
    /** The farthest value, in the unit. */
    readonly worst: number;
    /** d: when it was farthest. */
    readonly worstAt: number;
}
/**
 * What became of the fish. `dead`: half or more of the fish of a cohort died; `lethal`: water that kills half of them;
 * `at-risk`: a limit that hurts them was passed; `uncomfortable`: one that puts them off their feed or their ease.
 */
export interface FishVerdict {
    readonly state: 'dead' | 'lethal' | 'at-risk' | 'uncomfortable' | 'safe';
    /** d: since when; absent when safe. */
    readonly from?: number;
    /** The limits that say it, all of the worst kind of harm, the longest passed first. */
    readonly troubles: readonly Trouble[];
    /** Cohorts of which a twentieth or more died, most first. */
    readonly deaths: readonly ToldDeaths[];
}
/** Deaths in one cohort as a verdict tells them. */
export interface ToldDeaths {
    readonly cohort: string;
    readonly vessel: string;
    /** Of those that were there; natural deaths apart. */
    readonly share: number;
    /** What most of them died of. */
    readonly cause: CauseOfDeath;
    /** d: by which half of them had died; absent: less than half. */
    readonly halfBy?: number;
    /** d: by which none was left; absent: some live, or were taken out. */
    readonly wipedOut?: number;
}
/** What the crops gave, and what they were short of. */
export interface CropsVerdict {
    /** By crop its `mass`, g fresh (dry where the tables do not say how dry it is), most first. */
    readonly harvested: readonly {
        readonly crop: string;
        readonly mass: number;
        readonly dry: boolean;
    }[];
    /** Share of the time that standing crops were short of nitrogen. */
    readonly shortOfNitrogen: number;
    /** Chloride above what a crop stands. */
    readonly salt?: Trouble;
}
/** Something that went wrong first, and what was done just before it. */
export interface Beginning {
    /** d. */
    readonly time: number;
    /** What went wrong. */
    readonly what: {
        readonly kind: 'limit';
        readonly trouble: Trouble;
    } | {
        readonly kind: 'water';
        readonly event: RunEvent;
    } | {
        readonly kind: 'filter';
        readonly filter: FilterVerdict;
    };
    /** The last thing done to the system within the three days before that was no routine. */
    readonly after?: RunEvent;
}
/**
 * Until when a run is a forecast, d, and why no longer: what was outside the laws of the model, fish that would be dead, or a
 * run that broke off.
 */
export interface HoldsUntil {
    /** d. */
    readonly time: number;
    readonly why: 'domain' | 'fish' | 'broken-off';
    readonly trouble?: Trouble;
}
/** What a run comes to: fish, water, filter, crops, and where trouble began. Plain data. */
export interface RunVerdict {
    /** From when on it is no forecast; absent: it holds to the end. */
    readonly holdsUntil?: HoldsUntil;
    readonly fish?: FishVerdict;
    readonly water: WaterVerdict;
    readonly filter?: FilterVerdict;
    readonly crops?: CropsVerdict;
    readonly beginning?: Beginning;
}
/**
 * What a run comes to, for who runs the system: what happens to the fish, the water, the filter and the crops, and what
 * went wrong first. Worked out from limits by the harm of passing them, deaths, events and the harvest. A design aid: fish
 * welfare stays with local codes and licensed practice.
 * @param limits and series of the run, where they are at hand
 */
export declare function verdictOf(run: Run, limits?: readonly LimitResult[], series?: readonly Series[]): RunVerdict;
//# sourceMappingURL=verdict.d.ts.map