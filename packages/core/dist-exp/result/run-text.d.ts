import type { SimulateOptions } from '../run/driver.js';
import type { ResumableRun } from '../run/run-state.js';
/** A run of a system file, with what should be known of how it came about. */
export interface TextRun extends ResumableRun {
    /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
    readonly notes: readonly string[];
    /** Ids of the numbers used so far, each once. */
    readonly used: () => readonly string[];
}
/**
 * Reads a system, compiles it and runs it to its end.
 * @param system the text of a system file; or texts by path, the system first, then the files that it names
 * @throws InputError with every fault; RangeError where a row does not close
 */
export declare function run(system: string | Readonly<Record<string, string>>, options?: SimulateOptions): TextRun;
//# sourceMappingURL=run-text.d.ts.map