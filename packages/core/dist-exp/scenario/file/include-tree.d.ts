import { type TreeReading } from './read-tree.js';
/**
 * Reads a file by its path; throws where it cannot, and where it will not: `from` is the file that names the path, or
 * the option (`--set`, `--tables`) in which a person did.
 */
export type Load = (path: string, from: string) => string;
/** A path written in one file, as seen from where that file is read: `a/b.yaml` + `c.csv` -> `a/c.csv`. */
export declare function resolvePath(from: string, path: string): string;
/** The text at a path, or what went wrong, in one clause. */
export declare function loadText(load: Load | undefined, path: string, from: string): {
    text: string;
} | {
    problem: string;
};
/**
 * Reads a file and all it includes into one tree. Included files lie under the file that names them,
 * in the order named; a file's own keys win. A file that includes itself, by whatever way, is a fault. `whole` tells
 * whether every file was there: what is missing from a part cannot be judged.
 */
export declare function includeTree(text: string, file: string, load: Load | undefined): TreeReading & {
    readonly whole: boolean;
};
/** Reads as `load` does until one reading has opened more than is ever needed. */
export declare function boundedLoad(load: Load): Load;
//# sourceMappingURL=include-tree.d.ts.map