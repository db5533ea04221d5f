import type { Action } from '../scenario/scenario.js';
import type { RunParts } from './run-state.js';
/** Does one action at an instant, books it and logs it, with what it is part of. */
export declare function perform(parts: RunParts, action: Action, time: number, cause?: string): void;
/**
 * Harvests the batches that are ripe, and plants again where that is said; picks and cuts the others. Returns whether there
 * was anything.
 */
export declare function harvestRipe(parts: RunParts, time: number): boolean;
//# sourceMappingURL=actions.d.ts.map