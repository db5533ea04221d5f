import type { Model } from '../../model/model.js';
import type { Scenario } from '../../scenario/scenario.js';
/** Feed offered to each cohort at the start, g d-1 (0 for one that is stocked later). */
export declare function feedAtStart(scenario: Scenario): readonly number[];
/** TAN by the design rule, g N d-1: protein fed x `limit.tan-per-protein` (Timmons & Ebeling). */
export declare function tanByRule(model: Model): number;
/**
 * TAN that fish give off by this model, g N d-1, as at the start in sound water: with the urea and other dissolved organic
 * nitrogen that becomes TAN.
 */
export declare function tanByModel({ scenario, parameters }: Model): number;
/**
 * Water lost a day, m3 d-1, mean over the run: evaporation, transpiration of full crops, leaks and
 * exchange.
 */
export declare function waterLost(model: Model): number;
//# sourceMappingURL=design-loads.d.ts.map