import type { Path } from '../file/tree.js';
import type { Action, Scenario } from '../scenario.js';
import { type Cast } from './actions.js';
import type { ScenarioReport } from './scenario-report.js';
import { type LibraryNames } from './scenario-stock.js';
/** Checks one action. */
export declare function checkAction(report: ScenarioReport, action: Action, path: Path, cast: Cast, names: LibraryNames): void;
/** Checks the dated actions. */
export declare function checkActions(report: ScenarioReport, { actions, days }: Scenario, cast: Cast, names: LibraryNames): void;
/** Checks the rules. */
export declare function checkRules(report: ScenarioReport, { rules }: Scenario, cast: Cast, names: LibraryNames): void;
//# sourceMappingURL=scenario-operation.d.ts.map