import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Planting, Vessel } from '../scenario.js';
/** Checks that a planting is no larger than its bed. */
export declare function checkPlanted(report: Report, path: Path, area: number, bed: Vessel | undefined): void;
/** Checks that no crop is older than its age at harvest. */
export declare function checkAge(report: Report, path: Path, age: number, harvest: number): void;
/** What grows at the same time in a bed must fit on it. Beds that start empty are taken to follow others. */
export declare function checkBeds(report: Report, plantings: Named<Planting>, vessels: Named<Vessel>): void;
/** The first row of a table of rations whose mass is not above that of the row before; -1 where masses rise. */
export declare function fallingRow(rows: readonly {
    readonly mass: number;
}[]): number;
/** Whether hours of feeding, as shares of a day, lie within one day, the second later. */
export declare function isWithinDay({ from, to }: {
    readonly from: number;
    readonly to: number;
}): boolean;
//# sourceMappingURL=stock.d.ts.map