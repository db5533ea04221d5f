import type { Scenario } from '../scenario/scenario.js';
import type { ControlState, RunParts } from './run-state.js';
/** How the rules of a scenario stand before the run: each has random numbers of its own, seeded by its place in the file. */
export declare function startControls({ rules, seed }: Scenario): readonly ControlState[];
/**
 * Sets the rules of a scenario to watch a run. Call the answer at each day boundary with the day: every
 * rule whose reading day it is reads the water as it stands, then all that follows is done in the order of
 * `actionOrder`, ties in file order. Each firing is logged with its reading; a reading that cannot be
 * taken (a dry vessel, no pH) is logged and changes nothing. Answers whether anything was done.
 */
export declare function openControls(parts: RunParts): (time: number) => boolean;
//# sourceMappingURL=controls.d.ts.map