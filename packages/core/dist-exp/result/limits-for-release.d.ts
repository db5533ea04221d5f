import type { Values } from '../library/values.js';
import { type LimitCheck, type LimitReader } from './limit-check.js';
/**
 * Acute criterion (CMC, one-hour mean), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001.
 * @param trout whether salmon and trout of the genus Oncorhynchus are present
 */
export declare function acuteCriterion(values: Values, pH: number, temperature: number, trout: boolean): number;
/** Chronic criterion (CCC, 30-day mean, mussels present), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001. */
export declare function chronicCriterion(values: Values, pH: number, temperature: number): number;
/**
 * The criteria of US EPA 2013 for ammonia, for the water that would be let out: the reservoir and every
 * vessel that discharges. They protect wild life in the water that receives it, before any dilution.
 */
export declare function limitsForRelease(reader: LimitReader): readonly LimitCheck[];
//# sourceMappingURL=limits-for-release.d.ts.map