import type { Parameters } from '../library/parameters.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Metabolism } from './scope.js';
/**
 * What the fish of each cohort make of energy for which a measured feed conversion is given, by its name: as they stand at
 * the start, at their ration, in sound water of the temperature for which upkeep is stated.
 * @throws InputError with every conversion that no fish of that kind can have at its ration, and between which it must lie
 */
export declare function metabolismsOf(scenario: Scenario, parameters: Parameters): ReadonlyMap<string, Metabolism>;
//# sourceMappingURL=feed-conversion.d.ts.map