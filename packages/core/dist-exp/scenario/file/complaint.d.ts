import type * as z from 'zod';
import type { Path } from './tree.js';
/** What is wrong with one value, before it is known where it stands. */
export interface Complaint {
    readonly problem: string;
    readonly expected?: string;
    readonly nearest?: string;
    /** Of a value with several forms: the one that it was meant in, whose complaints say what is wrong. */
    readonly form?: number;
}
/** A complaint as the one text that a validation issue carries. */
export declare function complain(complaint: Complaint): string;
/** The usual complaint about a value that is not there or not of the kind expected. */
export declare function kindComplaint(input: unknown, expected: string): string;
/** A complaint with the path of the value it is about, and whether it is about the key itself. */
export interface PlacedComplaint extends Complaint {
    readonly path: Path;
    readonly aboutKey: boolean;
}
type Issue = z.core.$ZodIssue;
/** What the issues of a failed validation say, each at its full path. */
export declare function placeIssues(issues: readonly Issue[], above: Path): PlacedComplaint[];
export {};
//# sourceMappingURL=complaint.d.ts.map