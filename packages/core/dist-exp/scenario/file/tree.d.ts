/** Where a value was written: a file with a 1-based line and column, or the command line. */
export interface Origin {
    readonly file: string;
    readonly line?: number;
    readonly column?: number;
}
/** A key of a map: where the key stands, and its value. */
export interface Entry {
    readonly origin: Origin;
    readonly node: Tree;
}
/** What a file says, before it is understood: every value knows where it was written. */
export type Tree = {
    readonly kind: 'map';
    readonly origin: Origin;
    readonly entries: ReadonlyMap<string, Entry>;
} | {
    readonly kind: 'list';
    readonly origin: Origin;
    readonly items: readonly Tree[];
} | {
    readonly kind: 'scalar';
    readonly origin: Origin;
    readonly value: string | number | boolean | null;
    /** As written, for messages. */
    readonly source: string;
};
/** Path of a value from the root: keys and places in lists. */
export type Path = readonly (string | number)[];
/** A plain value: what a tree says without where. */
export type Plain = string | number | boolean | null | readonly Plain[] | {
    readonly [key: string]: Plain;
};
/** The path as people write it: `vessels.tank-1.volume`, `flows[0].rate`. */
export declare function describePath(path: Path): string;
/** The plain value of a tree. Keys left empty (`note:`) or set to null count as not written. */
export declare function plainOf(tree: Tree): Plain;
/** Whether a value was left out: `key:` with nothing after it, or null. */
export declare function isEmpty(tree: Tree): boolean;
/** The value at a path, or undefined. */
export declare function nodeAt(tree: Tree, path: Path): Tree | undefined;
/** Where the deepest written part of a path stands: the value itself, or the key that should hold it. */
export declare function originAt(tree: Tree, path: Path): Origin;
/** Where the key at the end of a path stands, or the item itself in a list. */
export declare function keyOrigin(tree: Tree, path: Path): Origin | undefined;
/** What came, short enough for a message. */
export declare function describeTree(tree: Tree): string;
//# sourceMappingURL=tree.d.ts.map