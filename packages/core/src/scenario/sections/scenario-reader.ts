import type { SubjectGroup } from '../../library/names.js';
import { nearestSubject } from '../../library/other-names.js';
import type { Parameters } from '../../library/parameters.js';
import type { Load } from '../file/include-tree.js';
import { Reader } from '../file/reader.js';
import type { Tree } from '../file/tree.js';

/** Reads sections of a system file, which take names and defaults from the numbers of the tables. */
export class ScenarioReader extends Reader {
  constructor(
    tree: Tree,
    readonly parameters: Parameters,
    load: Load | undefined,
  ) {
    super(tree, load);
  }

  protected override guess(name: string, names: readonly string[]): string | undefined {
    return nearestSubject(name, names);
  }

  /** The subjects of a group, those that the user added with them. */
  names(group: SubjectGroup): readonly string[] {
    return this.parameters.subjects(group);
  }
}
