import { type Parameters } from '../library/parameters.js';
import type { Action, Scenario } from './scenario.js';
/**
 * Checks a scenario built in code as a file is checked: names (vessels, pumps, waters, and those of the tables),
 * numbers, the network, levels, what stands in the beds, state at the start, actions, rules.
 *
 * @param parameters the numbers that it runs with; absent: those that its overrides make, which are checked too
 * @throws InputError with every fault, each at the path of its field: `vessels.tank.volume`, `actions[2].action.pump`
 */
export declare function checkScenario(scenario: Scenario, parameters?: Parameters): void;
/**
 * Checks one action against a scenario that was checked, as if it stood there.
 *
 * @throws InputError with every fault, each at the path of its field in the action: `action.cohort`
 */
export declare function checkOneAction(scenario: Scenario, action: Action, parameters: Parameters): void;
//# sourceMappingURL=check-scenario.d.ts.map