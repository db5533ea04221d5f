import type { Fault } from '../../base/faults.js';
import type { Tree } from './tree.js';
/**
 * Longest text of YAML, characters; most marks in it (what opens, closes or parts values), which bound what the parser
 * makes of it; deepest nesting, and the bound on it above which a text is not even parsed.
 */
export declare const yamlLimits: {
    characters: number;
    marks: number;
    depth: number;
    bound: number;
};
/** How many marks of YAML a text holds, those in quotes and comments too. */
export declare function yamlMarks(text: string): number;
/**
 * A bound on how deep a YAML text nests, seen from its brackets, its indentation and its dashes without
 * parsing it, so that a hostile text is refused before a parser goes down with it. Brackets in quotes and
 * comments count too: the bound may be too high, never too low by more than what one line holds.
 */
export declare function nestingBound(text: string): number;
/** A tree (undefined where the text cannot be read at all) and everything wrong with its YAML. */
export interface TreeReading {
    readonly tree: Tree | undefined;
    readonly faults: readonly Fault[];
}
/**
 * Reads YAML text into a tree that keeps the line and column of every key and value.
 *
 * @param text what the file holds
 * @param file its name for messages; `--set` for a value from the command line (no line numbers)
 */
export declare function readTree(text: string, file: string): TreeReading;
//# sourceMappingURL=read-tree.d.ts.map