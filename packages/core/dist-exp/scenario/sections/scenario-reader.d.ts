import type { SubjectGroup } from '../../library/names.js';
import type { Parameters } from '../../library/parameters.js';
import type { Load } from '../file/include-tree.js';
import { Reader } from '../file/reader.js';
import type { Tree } from '../file/tree.js';
/** Reads sections of a system file, which take names and defaults from the numbers of the tables. */
export declare class ScenarioReader extends Reader {
    readonly parameters: Parameters;
    constructor(tree: Tree, parameters: Parameters, load: Load | undefined);
    protected guess(name: string, names: readonly string[]): string | undefined;
    /** The subjects of a group, those that the user added with them. */
    names(group: SubjectGroup): readonly string[];
}
//# sourceMappingURL=scenario-reader.d.ts.map