import type { RunParts } from './run-state.js';
/**
 * Opens the watch over the fish: at each day boundary it is said of a cohort whose last fish has died since the boundary
 * before, with what killed most at that moment, and the part of a fish that is left is booked as dead. Fish that were taken
 * out are no deaths. Answers whether anything was booked.
 */
export declare function openFishWatch(parts: RunParts): (time: number) => boolean;
//# sourceMappingURL=fish-watch.d.ts.map