import { type Parameters } from '../library/parameters.js';
import type { Cohort, DailyValue, Planting, Ration, Scenario, StartVessel, StartWater, Vessel } from './scenario.js';
/** A number for all days, or a value by month or day. */
export type Daily = number | DailyValue;
/**
 * Water by what a test kit reads: `pH`, and in mg/L `tan`, `nitrite` and `nitrate` (as N), `chloride`, `oxygen` and
 * suspended `solids` (beside them `refractory`, those that hardly break down), `dissolved` organic matter (COD) and
 * `organic-nitrogen` (as N); `calcium` in mmol/L.
 */
export interface WaterGiven extends Partial<Omit<StartWater, 'alkalinity' | 'carbon'>> {
    readonly pH: number;
    /** meq/L. */
    readonly alkalinity: number;
}
/** A vessel and what it holds at the start. What is left out: no surface, floor, open water, aeration; full, without life. */
export interface VesselGiven extends Partial<Omit<Vessel, 'temperature' | 'name' | 'volume'> & Omit<StartVessel, 'vessel' | 'water' | 'volume'>> {
    readonly name: string;
    /** m3 at the standpipe. */
    readonly volume: number;
    /** degC. */
    readonly temperature: Daily;
    readonly water: WaterGiven;
    /** What stands in it at the start, m3; absent: it is full. */
    readonly filled?: number;
}
/** A cohort of fish; its ration as a share of what they weigh, d-1, or in any form; its feed by name. */
export interface CohortGiven extends Omit<Cohort, 'ration' | 'feed'> {
    /** A share of what the fish weigh, d-1, or any other form. */
    readonly ration: number | Ration;
    readonly feed: string | Cohort['feed'];
}
/** A planting: one batch, planted anew at the start and again at each harvest, unless said otherwise. */
export type PlantingGiven = Omit<Planting, 'batches' | 'after' | 'start' | 'age'> & Partial<Pick<Planting, 'batches' | 'after' | 'start' | 'age'>>;
/** A scenario by what cannot be left out; everything else is absent, or as a field says. */
export interface ScenarioGiven extends Partial<Omit<Scenario, 'days' | 'vessels' | 'cohorts' | 'plantings' | 'et0' | 'air' | 'start'>> {
    /** Length, d. */
    readonly days: number;
    /** The last is the reservoir, unless `reservoir` names another. */
    readonly vessels: readonly VesselGiven[];
    readonly cohorts?: readonly CohortGiven[];
    readonly plantings?: readonly PlantingGiven[];
    /** Reference evapotranspiration, m d-1; absent: none. */
    readonly et0?: Daily;
    /** Air temperature, degC; absent: that of the water. */
    readonly air?: Daily;
}
/**
 * Water as it is held, from what a test kit reads: its inorganic carbon follows from pH and alkalinity, and it holds as
 * much oxygen as air at the sea, unless said. Nitrogen, solids and chloride are 0 unless said, calcium goes with
 * alkalinity.
 * @param temperature degC
 * @param parameters the numbers of the tables; absent: ours
 */
export declare function startWater({ pH, alkalinity, ...given }: WaterGiven, temperature: number, parameters?: Parameters): StartWater;
/**
 * A whole scenario from what cannot be left out: numbers in place of daily values, water by pH and alkalinity, feeds by
 * name. Nothing is checked here: `compileModel` does, with every fault at its path.
 */
export declare function buildScenario({ vessels, cohorts, plantings, ...given }: ScenarioGiven): Scenario;
//# sourceMappingURL=build-scenario.d.ts.map