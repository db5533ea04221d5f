import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Doser, Scenario, Vessel } from '../scenario.js';
import type { ScenarioReport } from './scenario-report.js';
/**
 * 1 where all products of a doser bring base, -1 where all bring acid; undefined and a fault where that is not so.
 * @param at the path of each product
 */
export declare function signOf(report: Report, products: readonly string[], library: {
    readonly products: readonly string[];
    readonly alkalinity: (product: string) => number;
}, path: Path, at: (index: number) => Path): Doser['sign'] | undefined;
/**
 * Dosers that cannot both be: the same twice in one vessel, or a base and an acid that feed at once by the same water.
 * @param section of the dosers, and its key of the value held
 */
export declare function checkPairs(report: Report, dosers: readonly (Doser | undefined)[], [section, level]: readonly [section: string, level: string]): void;
/** Checks the dosers of a scenario built in code; gives those that are without fault. */
export declare function checkDosers(report: ScenarioReport, { dosers }: Scenario, vessels: Named<Vessel>, library: {
    readonly products: readonly string[];
    readonly alkalinity: (product: string) => number;
}): readonly Doser[];
//# sourceMappingURL=dosers.d.ts.map