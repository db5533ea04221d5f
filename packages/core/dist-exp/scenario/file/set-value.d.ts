import type { Fault } from '../../base/faults.js';
import { type Tree } from './tree.js';
/** A value given beside the file, as `--set path=value`. */
export interface Setting {
    readonly path: string;
    readonly value: string;
}
/**
 * Puts one value into the tree at a path such as `vessels.tank-1.volume` or `flows[0].rate`. The value
 * is read as YAML; an empty one takes away what is there. Entries on the way must exist, save the sections of the file
 * named in `sections`; what a file includes cannot be set.
 */
export declare function setValue(tree: Tree, setting: Setting, sections: ReadonlySet<string>): {
    tree: Tree;
    faults: readonly Fault[];
};
//# sourceMappingURL=set-value.d.ts.map