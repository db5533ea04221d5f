import type { RunParts } from './run-state.js';
/**
 * Looks at each doser at a day boundary: one that runs, whose water is a whole band or more beyond what it holds, gives
 * its most and holds no longer. That is told once, until it holds again.
 */
export declare function watchDosers({ model, state, ledger }: RunParts, time: number): void;
//# sourceMappingURL=dosers.d.ts.map