import type { Model } from '../../model/model.js';
import { type LimitResult } from '../../result/limits.js';
/**
 * What a system is outside of at its start, of where the laws of the model were measured: nothing is simulated. Empty
 * where it begins inside.
 */
export declare function domainAtStart(model: Model): readonly LimitResult[];
//# sourceMappingURL=domain-at-start.d.ts.map