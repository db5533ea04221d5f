import type { UsedDefault } from './reader.js';
import { type Plain, type Tree } from './tree.js';
/**
 * One `value` of a resolved file, as it is written there, and where it came from: `file:line`, `--set`, `--days` or
 * `default`.
 */
export interface ResolvedValue {
    readonly key: string;
    readonly value: string | number | boolean;
    readonly origin: string;
}
/** A file with everything it includes, sets and leaves to defaults written out. */
export interface ResolvedTree {
    /** As plain values: written as YAML or JSON it reads to the same scenario. */
    readonly plain: Readonly<Record<string, Plain>>;
    /** Every single value in order with where it came from. */
    readonly values: readonly ResolvedValue[];
}
/**
 * Lays the defaults used into a tree. A default that came out differently for different readers of the
 * same path (oxygen at saturation in vessels of different temperature) stays unwritten.
 */
export declare function resolveTree(tree: Tree, defaults: readonly UsedDefault[], over: {
    readonly days?: number;
}): ResolvedTree;
//# sourceMappingURL=resolve-tree.d.ts.map