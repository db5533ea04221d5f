import type { Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import type { Path } from './tree.js';

/** Names are words that may stand in a series name such as `nitrate@sump`. */
const namePattern = /^[A-Za-z][A-Za-z0-9_-]{0,63}$/;

/** The place of series and budgets that are of no part but of the whole. */
const ofTheWhole = 'system';

/** Where a field of something stands; without a field the thing itself. */
export type FieldPath = (field?: string) => Path;

/** Entries of a section by name; undefined where the entry is there but faulty. */
export type Named<T> = ReadonlyMap<string, T | undefined>;

/** Those that were read without a fault. */
export const present = <T>(named: Named<T>): T[] =>
  [...named.values()].filter((entry) => entry !== undefined);

/** Names that may be referred to. */
export type Names = ReadonlySet<string> | ReadonlyMap<string, unknown> | readonly string[];

/** Collects what is wrong with a system, each fault at the path of the value it is about. */
export abstract class Report {
  readonly faults: Fault[] = [];

  /** Notes a fault at a path; with `aboutKey` it is about the key there, not about its value. */
  abstract fault(path: Path, problem: string, rest?: Partial<Fault>, aboutKey?: boolean): void;

  /** Notes that a section (`key` in a file) is not there, unless it is there and faulty itself. */
  abstract lacks(path: Path, what: string, key: string): void;

  /** What the system stands in, for messages: a file, or a scenario built in code. */
  protected abstract readonly origin: string;

  /** What is told of an unknown name, where it is not what stands at the path. */
  protected abstract gotName(name: string): Partial<Fault>;

  /** The name that is most likely meant by one that is not known. */
  protected guess(name: string, names: readonly string[]): string | undefined {
    return nearest(name, names);
  }

  /** Checks a name that is given to something, at the path where it stands. */
  checkName(name: string, path: Path, aboutKey = false): void {
    if (ofTheWhole === name) {
      const expected = 'another name: series of the whole, such as volume@system, bear this one';
      this.fault(path, 'a name that is taken', { got: name, expected }, aboutKey);
      return;
    }
    if (namePattern.test(name)) return;
    const expected = 'a letter, then letters, digits, - and _, at most 64';
    this.fault(path, 'not a name', { got: JSON.stringify(name.slice(0, 70)), expected }, aboutKey);
  }

  /** Whether a section has no more entries than it may; a fault where it has. */
  checkCount(section: Path, count: number, most: number): boolean {
    if (count <= most) return true;
    this.fault(section, 'too many entries', { got: String(count), expected: `at most ${most}` }, true);
    return false;
  }

  /** Checks a name against those there are. A name of a faulty entry is no second fault. */
  known(name: string, names: Names, path: Path, what: string): boolean {
    if ('has' in names ? names.has(name) : names.includes(name)) return true;
    const all = 'has' in names ? [...names.keys()] : [...names];
    // A file without vessels was told so.
    if (all.length === 0 && what === 'vessel') return false;
    const guess = this.guess(name, all);
    const listing =
      all.length === 0
        ? `a ${what} of this ${this.origin}, which has none`
        : `one of ${all.slice(0, 12).join(', ')}${all.length > 12 ? ' ...' : ''}`;
    const hint = guess === undefined ? { expected: listing } : { nearest: guess };
    this.fault(path, `unknown ${what}`, { ...this.gotName(name), ...hint });
    return false;
  }

  /** The entry of that name; undefined (and a fault, unless the entry itself is faulty) where there is none. */
  lookup<T>(named: Named<T>, name: string, path: Path, what: string): T | undefined {
    return this.known(name, named, path, what) ? named.get(name) : undefined;
  }
}
