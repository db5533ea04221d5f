import type { Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { readTree } from './read-tree.js';
import { describePath, type Entry, type Origin, type Path, type Tree } from './tree.js';

/** A value given beside the file, as `--set path=value`. */
export interface Setting {
  readonly path: string;
  readonly value: string;
}

const origin: Origin = { file: '--set' };

/** Steps of a written path. Below `parameters` the rest is one name, because those names hold dots. */
function stepsOf(path: string): string[] {
  const parameter = /^parameters\.(.+)$/.exec(path);
  return parameter?.[1] === undefined
    ? path.replace(/\[(\d+)\]/g, '.$1').split('.')
    : ['parameters', parameter[1]];
}

class SettingFault extends Error {
  constructor(readonly fault: Fault) {
    super(fault.problem);
  }
}

function put(
  tree: Tree,
  steps: readonly string[],
  done: Path,
  value: Tree,
  sections: ReadonlySet<string>,
): Tree {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const here: Path = [...done, tree.kind === 'list' && /^\d+$/.test(step) ? Number(step) : step];
  const fail = (problem: string, extra: Partial<Fault> = {}): never => {
    throw new SettingFault({ ...origin, key: describePath(here), problem, ...extra });
  };
  if (tree.kind === 'list') {
    const item = /^\d+$/.test(step) ? tree.items[Number(step)] : undefined;
    if (item === undefined) {
      return fail('no such place in the list', {
        got: step,
        expected: `a number from 0 to ${tree.items.length - 1}`,
      });
    }
    const items = tree.items.map((old) => (old === item ? put(item, rest, here, value, sections) : old));
    return { ...tree, items };
  }
  if (tree.kind === 'scalar' && tree.value !== null) return fail('nothing can stand below a single value');
  const entries = new Map<string, Entry>(tree.kind === 'map' ? tree.entries : []);
  const below = entries.get(step)?.node;
  const opens = done.length === 0 && sections.has(step);
  const takesAway = rest.length === 0 && value.kind === 'scalar' && value.value === null;
  if (below === undefined && (takesAway || (rest.length > 0 && !opens))) {
    const names = takesAway || done.length > 0 ? [...entries.keys()] : [...sections];
    const guess = nearest(step, names);
    const problem = takesAway ? 'no such entry to take away' : 'no such entry';
    return fail(problem, guess === undefined ? {} : { nearest: guess });
  }
  const under: Tree = below ?? { kind: 'map', origin, entries: new Map() };
  entries.set(step, { origin, node: put(under, rest, here, value, sections) });
  return { kind: 'map', origin: tree.origin, entries };
}

/**
 * Puts one value into the tree at a path such as `vessels.tank-1.volume` or `flows[0].rate`. The value
 * is read as YAML; an empty one takes away what is there. Entries on the way must exist, save the sections of the file
 * named in `sections`; what a file includes cannot be set.
 */
export function setValue(
  tree: Tree,
  setting: Setting,
  sections: ReadonlySet<string>,
): { tree: Tree; faults: readonly Fault[] } {
  const [first] = stepsOf(setting.path);
  if (first === 'include') {
    const problem = 'what a file includes cannot be set';
    const expected = 'a file that includes what it is laid over';
    return { tree, faults: [{ ...origin, key: setting.path, problem, expected }] };
  }
  const { tree: value, faults } = readTree(setting.value, '--set');
  if (value === undefined || faults.length > 0) {
    return { tree, faults: faults.map((fault) => ({ ...fault, key: setting.path })) };
  }
  try {
    return { tree: put(tree, stepsOf(setting.path), [], value, sections), faults: [] };
  } catch (error) {
    if (!(error instanceof SettingFault)) throw error;
    return { tree, faults: [error.fault] };
  }
}
