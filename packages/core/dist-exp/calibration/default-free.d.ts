import type { Parameters } from '../library/parameters.js';
import type { Scenario } from '../scenario/scenario.js';
/** The numbers that are free where none is named: of those above, what this system reads. */
export declare function defaultFree(scenario: Scenario, parameters: Parameters, used: readonly string[]): readonly string[];
//# sourceMappingURL=default-free.d.ts.map