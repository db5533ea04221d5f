import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Measurable, Rule } from '../scenario.js';
/** Whether a rule lets go on the other side of its level; a fault, with the level as `written`, where it does not. */
export declare function checkUntil(report: Report, path: Path, { side, level, until }: Pick<Rule, 'side' | 'level'> & {
    readonly until?: number | undefined;
}, written: string): boolean;
/** Whether an error of a reading may be a share of it; a fault where the scale has no true zero. */
export declare function checkRelative(report: Report, path: Path, read: Measurable): boolean;
/**
 * Whether what a rule does leaves a setting that stands. A fault where it does not and nothing bounds how often it is
 * done: `bounded` by a wait, a number of times, a level to let go at, or something that undoes it.
 */
export declare function checkBounded(report: Report, path: Path, doing: Rule['doing'], bounded: boolean, what: string): boolean;
//# sourceMappingURL=rules.d.ts.map