import type { Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import type { Path } from './tree.js';

/** Entries of a section by name; undefined where the entry is there but faulty. */
export type Named<T> = ReadonlyMap<string, T | undefined>;

/** Names that may be referred to. */
export type Names = ReadonlySet<string> | ReadonlyMap<string, unknown> | readonly string[];

/** Collects what is wrong with a system, each fault at the path of the value it is about. */
export abstract class Report {
  readonly faults: Fault[] = [];

  /** Notes a fault at a path; with `aboutKey` it is about the key there, not about its value. */
  abstract fault(path: Path, problem: string, rest?: Partial<Fault>, aboutKey?: boolean): void;

  /** Checks a name against those there are. A name of a faulty entry is no second fault. */
  known(name: string, names: Names, path: Path, what: string): boolean {
    if ('has' in names ? names.has(name) : names.includes(name)) return true;
    const all = 'has' in names ? [...names.keys()] : [...names];
    // A file without vessels was told so.
    if (all.length === 0 && what === 'vessel') return false;
    const guess = nearest(name, all);
    const listing =
      all.length === 0
        ? `a ${what} of this file, which has none`
        : `one of ${all.slice(0, 12).join(', ')}${all.length > 12 ? ' ...' : ''}`;
    this.fault(path, `unknown ${what}`, guess === undefined ? { expected: listing } : { nearest: guess });
    return false;
  }

  /** The entry of that name; undefined (and a fault, unless the entry itself is faulty) where there is none. */
  lookup<T>(named: Named<T>, name: string, path: Path, what: string): T | undefined {
    return this.known(name, named, path, what) ? named.get(name) : undefined;
  }
}
