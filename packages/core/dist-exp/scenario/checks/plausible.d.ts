import type { FieldPath, Named, Report } from '../file/report.js';
import type { Action, Cohort, Vessel } from '../scenario.js';
/**
 * Checks what each number by itself allows, but not all of them together: fish that do not fit into the water, feed of
 * many times their mass.
 * @param section where the cohorts stand: `fish` in a file, `cohorts` in a scenario built in code
 */
export declare function checkPlausible(report: Report, section: string, cohorts: Named<Cohort>, vessels: Named<Vessel>): void;
/** Checks the same of one action: fish that are stocked, a product that is dosed. */
export declare function checkPlausibleAction(report: Report, at: FieldPath, action: Action, cohorts: Named<Cohort>, vessels: Named<Vessel>): void;
//# sourceMappingURL=plausible.d.ts.map