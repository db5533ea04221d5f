import { type ActionPair } from './action-verbs.js';
import type { Cast } from '../checks/actions.js';
import type { RunFrame } from './run.js';
import type { TimedAction } from '../scenario.js';
import { type actionSchema } from './action-schema.js';
import type { Path } from '../file/tree.js';
import type { ScenarioReader } from './scenario-reader.js';
type ActionGiven = ReturnType<typeof actionSchema.parse>;
/** Reads what a rule does: one verb, without a time. Undefined (and a fault) where that is not so. */
export declare function readAction(given: ActionGiven, reader: ScenarioReader, path: Path, cast: Cast): ActionPair | undefined;
/**
 * Reads `dosing`, `drain-solids` and `actions` into one list of dated actions, repeats written out,
 * in order of time and, at the same time, of the file: plans first, then actions. What lies past the
 * end of a run that was cut short is left out.
 */
export declare function readActions(reader: ScenarioReader, frame: RunFrame, cast: Cast): TimedAction[];
export {};
//# sourceMappingURL=actions.d.ts.map