import type { Parameters } from '../library/parameters.js';
import { type Load } from './file/include-tree.js';
import { type ResolvedTree } from './file/resolve-tree.js';
import type { Scenario } from './scenario.js';
import { type Setting } from './file/set-value.js';
/** How a scenario is read. */
export interface ReadOptions {
    /** Name of the file, for messages and as the place that included paths are seen from. */
    readonly file: string;
    /** Reads included files and CSV files by path; throws where it cannot. */
    readonly load?: Load;
    /** Tables of numbers read after those that the file names, so that they win; paths as `load` takes them. */
    readonly tables?: readonly string[];
    /** Values put over those of the file, in order. */
    readonly set?: readonly Setting[];
    /** Length of the run in days, in place of the file's. */
    readonly days?: number;
    /** Output step such as `"6 h"`, in place of the file's. */
    readonly every?: string;
}
/** A scenario with the file it came from, completed. */
export interface ScenarioReading {
    readonly scenario: Scenario;
    readonly resolved: ResolvedTree;
    /** Ids of the numbers of the tables that the reading used (surfaces, waters, lengths of crops ...). */
    readonly used: readonly string[];
    /** What was assumed for want of data, one line each. */
    readonly notes: readonly string[];
}
/** A system file that was read, to be read again with other numbers of the tables. */
export interface OpenScenario {
    readonly reading: ScenarioReading;
    /**
     * The scenario as these numbers make it: surfaces, waters, lengths of crops and whatever else reading
     * takes from the tables. Much faster than reading the text again. Throws InputError where they make none.
     */
    again(parameters: Parameters): Scenario;
}
/**
 * Reads a system file as `readScenarioFully` does and keeps it open. Throws InputError with every fault found.
 */
export declare function openScenarioText(text: string, given: ReadOptions): OpenScenario;
/**
 * Reads a system file: YAML with line numbers, what it includes, values set beside it, checked as a whole.
 *
 * @returns the scenario in internal units, the file as completed by defaults, and the numbers used
 * @throws InputError with every fault found, each with file, line, column and key
 */
export declare function readScenarioFully(text: string, options: ReadOptions): ScenarioReading;
/** The scenario of a system file, in internal units. Throws InputError with every fault found. */
export declare function readScenario(text: string, options: ReadOptions): Scenario;
/** A system file after include, settings and defaults, with the origin of each value. Throws as readScenario does. */
export declare function resolvedTree(text: string, options: ReadOptions): ResolvedTree;
//# sourceMappingURL=read-scenario.d.ts.map