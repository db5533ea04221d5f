import { InputError } from '../../base/faults.js';
import { type FileChange, changesBetween, withChanges } from '../../scenario/file/tree-changes.js';
import type { Plain } from '../../scenario/file/tree.js';

/** Every combination of the changes between two files: what to run. */
export interface ChangePlan {
  readonly changes: readonly FileChange[];
  /** The file of each set of changes, by the bits of its number, as JSON, which the reader takes for YAML. */
  readonly texts: readonly string[];
  /** Groups that had to be made: changes that only stand together, or that were too many. */
  readonly grouped: readonly string[];
}

const merge = (changes: readonly FileChange[]): FileChange =>
  changes.length === 1
    ? changes[0]
    : {
        name: changes.map(({ name }) => name).join(' + '),
        pieces: changes.flatMap(({ pieces }) => pieces),
      };

const sectionOf = ({ name }: FileChange): string => /^[^.:]*/.exec(name)?.[0] ?? name;

/** No more than so many changes: those of a section together first, then the last of the file together. */
function atMost(changes: readonly FileChange[], most: number): readonly FileChange[] {
  if (changes.length <= most) return changes;
  const sections = [...new Set(changes.map(sectionOf))];
  const bySection = sections.map((section) => merge(changes.filter((each) => sectionOf(each) === section)));
  if (bySection.length <= most) return bySection;
  return [...bySection.slice(0, most - 1), merge(bySection.slice(most - 1))];
}

const madeIn = (changes: readonly FileChange[], set: number): readonly FileChange[] =>
  changes.filter((_, i) => (set & (1 << i)) !== 0);

/** The first set of changes, the smallest first, that makes no system; undefined: all do. */
function badSet(
  changes: readonly FileChange[],
  textOf: (set: number) => string,
  stands: (text: string) => boolean,
): number | undefined {
  const size = (set: number): number => madeIn(changes, set).length;
  const sets = Array.from({ length: 1 << changes.length }, (_, set) => set).sort((p, q) => size(p) - size(q));
  return sets.find((set) => !stands(textOf(set)));
}

/**
 * Finds the changes between two files and every combination of them. Changes that make no system without each other (a
 * new tank, and the pipe that leads to it) are taken together; so are those beyond the most.
 * @param a and b as written (`written` of a resolved file)
 * @param most changes at the most: there are 2^most files
 * @param read throws InputError where a text makes no system
 * @throws InputError where the files say the same
 */
export function planChanges(
  a: Readonly<Record<string, Plain>>,
  b: Readonly<Record<string, Plain>>,
  most: number,
  read: (text: string) => void,
): ChangePlan {
  const found = changesBetween(a, b);
  if (found.length === 0)
    throw new InputError([
      { problem: 'both files say the same', expected: 'two that differ in more than their title' },
    ]);
  const stands = (text: string): boolean => {
    try {
      read(text);
      return true;
    } catch (error) {
      if (error instanceof InputError) return false;
      throw error;
    }
  };
  let changes = atMost(found, most);
  const textOf = (set: number): string => JSON.stringify(withChanges(a, b, madeIn(changes, set)));
  for (let bad = badSet(changes, textOf, stands); bad !== undefined; bad = badSet(changes, textOf, stands)) {
    const first = madeIn(changes, bad);
    if (changes.length === 1) break;
    // What fails alone goes with the first other that lets it stand, or with everything.
    const partner = changes.find((each, i) => !first.includes(each) && stands(textOf((bad ?? 0) | (1 << i))));
    const together = first.length > 1 ? first : partner === undefined ? changes : [...first, partner];
    changes = [merge(together), ...changes.filter((each) => !together.includes(each))];
  }
  return {
    changes,
    texts: Array.from({ length: 1 << changes.length }, (_, set) => textOf(set)),
    grouped: changes.filter((each) => !found.includes(each)).map(({ name }) => name),
  };
}
