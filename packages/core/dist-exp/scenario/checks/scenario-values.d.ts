import type { Named } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { DailyValue } from '../scenario.js';
import { type DailyNeed } from './daily.js';
import type { ScenarioReport } from './scenario-report.js';
/** Any number that is finite: what lies before a run counts back from its start. */
export declare const anyNumber: import("../../base/bounds.js").NumberBound;
/** Checks a daily value: its form, its numbers, and that it reaches to the end of the run. */
export declare function checkDailyValue(report: ScenarioReport, value: DailyValue, path: Path, need: DailyNeed): boolean;
/** Entries that have names, one by one: undefined where one is faulty. Names stand once. */
export declare function checkNamed<T extends {
    readonly name: string;
}>(report: ScenarioReport, section: string, entries: readonly T[], limit: number, isSound: (entry: T, path: Path) => boolean): Named<T>;
//# sourceMappingURL=scenario-values.d.ts.map