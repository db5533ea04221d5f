import type * as z from 'zod';
import type { Fault } from '../../base/faults.js';
import type { Load } from './include-tree.js';
import { type Named, Report } from './report.js';
import { type Path, type Plain, type Tree } from './tree.js';
/** The same keys, where those that may be undefined may only be absent. */
export type Compact<T> = {
    [Key in keyof T as undefined extends T[Key] ? never : Key]: T[Key];
} & {
    [Key in keyof T as undefined extends T[Key] ? Key : never]?: Exclude<T[Key], undefined>;
};
/** Leaves out the keys whose value is undefined. */
export declare function compact<T extends object>(value: T): Compact<T>;
/** A default that was used: where it would stand, and as what it would be written. */
export interface UsedDefault {
    readonly path: Path;
    readonly value: Plain;
}
/** Reads parts of a tree by schema; collects every fault with its place, and every default used. */
export declare class Reader extends Report {
    readonly tree: Tree;
    readonly load: Load | undefined;
    readonly defaults: UsedDefault[];
    /** What should be known of the reading though it is no fault: what was assumed. */
    readonly notes: string[];
    protected readonly origin = "file";
    constructor(tree: Tree, load: Load | undefined);
    /** A fault at a path. What came is taken from the tree where it is one value. */
    fault(path: Path, problem: string, rest?: Partial<Fault>, aboutKey?: boolean): void;
    protected gotName(): Partial<Fault>;
    lacks(path: Path, what: string, key: string): void;
    /** Whether the tree has anything at a path. */
    has(path: Path): boolean;
    /** The part of the tree at a path, read by a schema; undefined (and faults) where it does not fit. */
    parse<T>(schema: z.ZodType<T>, path: Path): T | undefined;
    /** The keys of the map at a path; a fault where something else stands there. */
    keys(path: Path): string[];
    /** Reads a section of named entries, one by one. A section not written has none. */
    named<T>(section: string, most: number, read: (path: Path, name: string) => T | undefined): Named<T>;
    /** Reads a section that is a list, item by item. */
    listed<T>(section: string, most: number, read: (path: Path) => T | undefined): (T | undefined)[];
    /** Notes that a default stands in for a key not written, and gives it back. */
    fallback<T>(path: Path, value: T, written: Plain): T;
    /** Where a path was written, for messages of the run: `glasshouse.yaml:12`. */
    where(path: Path): string;
}
//# sourceMappingURL=reader.d.ts.map