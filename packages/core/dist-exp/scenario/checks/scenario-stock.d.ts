import type { Named } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Cohort, Feed, Planting, Ration, Scenario, Vessel } from '../scenario.js';
import type { ScenarioReport } from './scenario-report.js';
/** Names in the tables. */
export interface LibraryNames {
    readonly species: readonly string[];
    readonly crops: readonly string[];
    readonly feeds: readonly string[];
    readonly products: readonly string[];
    readonly lime: readonly string[];
    /** eq per g of a product. */
    readonly alkalinity: (product: string) => number;
}
/** Checks a ration. */
export declare function checkRation(report: ScenarioReport, ration: Ration, path: Path): boolean;
/** Checks a feed against those of the tables: its name tells its oxygen demand. */
export declare function checkFeed(report: ScenarioReport, feed: Feed, path: Path, { feeds }: LibraryNames): boolean;
/** Checks the fish. */
export declare function checkCohorts(report: ScenarioReport, { cohorts }: Scenario, vessels: Named<Vessel>, names: LibraryNames): Named<Cohort>;
/** Checks the plantings, each by itself. */
export declare function checkPlantings(report: ScenarioReport, { plantings }: Scenario, vessels: Named<Vessel>, { crops }: LibraryNames): Named<Planting>;
//# sourceMappingURL=scenario-stock.d.ts.map