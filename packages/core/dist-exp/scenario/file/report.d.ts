import type { Fault } from '../../base/faults.js';
import type { Path } from './tree.js';
/** Where a field of something stands; without a field the thing itself. */
export type FieldPath = (field?: string) => Path;
/** Entries of a section by name; undefined where the entry is there but faulty. */
export type Named<T> = ReadonlyMap<string, T | undefined>;
/** Names that may be referred to. */
export type Names = ReadonlySet<string> | ReadonlyMap<string, unknown> | readonly string[];
/** Collects what is wrong with a system, each fault at the path of the value it is about. */
export declare abstract class Report {
    readonly faults: Fault[];
    /** Notes a fault at a path; with `aboutKey` it is about the key there, not about its value. */
    abstract fault(path: Path, problem: string, rest?: Partial<Fault>, aboutKey?: boolean): void;
    /** Notes that a section (`key` in a file) is not there, unless it is there and faulty itself. */
    abstract lacks(path: Path, what: string, key: string): void;
    /** What the system stands in, for messages: a file, or a scenario built in code. */
    protected abstract readonly origin: string;
    /** What is told of an unknown name, where it is not what stands at the path. */
    protected abstract gotName(name: string): Partial<Fault>;
    /** The name that is most likely meant by one that is not known. */
    protected guess(name: string, names: readonly string[]): string | undefined;
    /** Checks a name that is given to something, at the path where it stands. */
    checkName(name: string, path: Path, aboutKey?: boolean): void;
    /** Whether a section has no more entries than it may; a fault where it has. */
    checkCount(section: Path, count: number, most: number): boolean;
    /** Checks a name against those there are. A name of a faulty entry is no second fault. */
    known(name: string, names: Names, path: Path, what: string): boolean;
    /** The entry of that name; undefined (and a fault, unless the entry itself is faulty) where there is none. */
    lookup<T>(named: Named<T>, name: string, path: Path, what: string): T | undefined;
}
//# sourceMappingURL=report.d.ts.map