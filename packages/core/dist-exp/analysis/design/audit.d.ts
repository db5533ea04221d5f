import type { TableRow } from '../../library/table-row.js';
import type { Model } from '../../model/model.js';
import type { Scenario } from '../../scenario/scenario.js';
/**
 * Water led into each vessel, m3 d-1, with every pump running by its clock and every vessel at its
 * standpipe: pumped flows, and what comes down by gravity. Top-up and losses are left out. Throws
 * RangeError where gravity leads round in a circle.
 */
export declare function designFlows(scenario: Scenario): Map<string, number>;
/** One number of a design beside what is published for it. */
export interface AuditItem {
    readonly name: string;
    /** Vessel, or `system`. */
    readonly place: string;
    /** In `unit`. */
    readonly value: number;
    readonly unit: string;
    /** Published range; an end that is absent is open. */
    readonly low?: number;
    /** Upper end. */
    readonly high?: number;
    /** `none`: no range is published for it here. */
    readonly verdict: 'inside' | 'below' | 'above' | 'none';
    readonly source?: string;
    readonly page?: string;
    readonly mark?: TableRow['mark'];
    /** How the number was come by. */
    readonly note: string;
}
/**
 * Looks a design over without running it: what it turns over, feeds, makes, filters, stocks and loses,
 * each beside its published range. Numbers are of the start of the run. A design aid, not an approval.
 */
export declare function auditOf(model: Model): readonly AuditItem[];
//# sourceMappingURL=audit.d.ts.map