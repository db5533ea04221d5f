import type { Model } from '../model/model.js';
import type { RunParts, RunState } from './run-state.js';
/**
 * The state of a run at its start, but for what the numerical methods remember.
 * @param weatherOf the day whose weather it is
 */
export declare function startState(model: Model, weatherOf?: number): Omit<RunState, 'memory'>;
/** Opens the parts of a run over its state, with nothing left behind yet. */
export declare function openParts(model: Model, state: RunState): RunParts;
//# sourceMappingURL=start.d.ts.map