import { type LimitCheck, type LimitReader } from './limit-check.js';
/** Limits for fish: each species in each vessel once (cohorts of one species in one vessel are judged together). */
export declare function limitsForFish(reader: LimitReader): readonly LimitCheck[];
//# sourceMappingURL=limits-for-fish.d.ts.map