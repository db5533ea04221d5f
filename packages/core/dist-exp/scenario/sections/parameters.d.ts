import * as z from 'zod';
import { type Fault } from '../../base/faults.js';
import { type Parameters } from '../../library/parameters.js';
import { type Load } from '../file/include-tree.js';
import { type Tree } from '../file/tree.js';
import type { Override } from '../../library/override.js';
/** The key `tables`. */
export declare const tablesSchema: z.ZodOptional<z.ZodUnion<readonly [import("../file/values.js").Reads<string, string>, z.ZodArray<import("../file/values.js").Reads<string, string>>]>>;
/** The numbers given anew, the tables with them in place, and what is wrong with them. */
export interface OverrideReading {
    readonly overrides: readonly Override[];
    readonly parameters: Parameters;
    readonly faults: readonly Fault[];
    /** What the tables of the user changed, one line a table. */
    readonly notes: readonly string[];
}
/**
 * Reads the tables of the user and the section `parameters`. Comes first, since defaults of other sections are
 * numbers of the tables. Single numbers win over tables, later tables over earlier.
 */
export declare function readOverrides(tree: Tree, options: {
    readonly load?: Load;
    readonly tables?: readonly string[];
}): OverrideReading;
/**
 * Reads tables of the user without a scenario.
 * @param tables paths as `load` takes them, a later one winning over an earlier
 * @returns what `createParameters` takes, and what the tables changed, one line each
 * @throws InputError with every fault, each with file, line and column
 */
export declare function readOwnTables(tables: readonly string[], load: Load): {
    readonly overrides: readonly Override[];
    readonly notes: readonly string[];
};
//# sourceMappingURL=parameters.d.ts.map