import type { Fault } from '../../base/faults.js';
import { readTree, type TreeReading, yamlLimits, yamlMarks } from './read-tree.js';
import { describeTree, type Entry, type Origin, type Tree } from './tree.js';

/**
 * Lays one tree over another: maps merge key by key, anything else (lists too) is replaced. A key
 * set to null in `over` takes the key of `under` away; the items of a list under a key with `+` behind it (`actions+`)
 * are added to those of `under`. Every value keeps where it was written.
 */
function mergeTree(under: Tree, over: Tree): Tree {
  if (under.kind !== 'map' || over.kind !== 'map') return over;
  const entries = new Map<string, Entry>(under.entries);
  for (const [written, entry] of over.entries) {
    const more = written.endsWith('+') && entry.node.kind === 'list' ? entry.node : undefined;
    const key = more === undefined ? written : written.slice(0, -1);
    const below = entries.get(key);
    if (more !== undefined && (below === undefined || below.node.kind === 'list')) {
      const before = below?.node.kind === 'list' ? below.node.items : [];
      entries.set(key, { origin: entry.origin, node: { ...more, items: [...before, ...more.items] } });
      continue;
    }
    const node = below === undefined ? entry.node : mergeTree(below.node, entry.node);
    entries.set(key, { origin: entry.origin, node });
  }
  return { kind: 'map', origin: over.origin, entries };
}

/**
 * Reads a file by its path; throws where it cannot, and where it will not: `from` is the file that names the path, or
 * the option (`--set`, `--tables`) in which a person did.
 */
export type Load = (path: string, from: string) => string;

/** Most files under one another, most files in all, and most characters and marks in them together. */
const limits = { depth: 8, files: 64, characters: yamlLimits.characters, marks: yamlLimits.marks };

/** A path written in one file, as seen from where that file is read: `a/b.yaml` + `c.csv` -> `a/c.csv`. */
export function resolvePath(from: string, path: string): string {
  if (/^([/\\]|[a-z]+:)/i.test(path)) return path;
  const cut = from.lastIndexOf('/');
  return cut < 0 ? path : `${from.slice(0, cut + 1)}${path}`;
}

/** The text at a path, or what went wrong, in one clause. */
export function loadText(
  load: Load | undefined,
  path: string,
  from: string,
): { text: string } | { problem: string } {
  if (load === undefined) return { problem: 'other files cannot be read here' };
  try {
    return { text: load(path, from) };
  } catch (error) {
    return { problem: `cannot be read: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function includedPaths(node: Tree, faults: Fault[]): { path: string; origin: Origin }[] {
  const written = node.kind === 'list' ? node.items : [node];
  return written.flatMap((item) => {
    if (item.kind === 'scalar' && typeof item.value === 'string') {
      return [{ path: item.value, origin: item.origin }];
    }
    const expected = 'a file name such as "system.yaml", or a list of them';
    const problem = 'wrong kind of value';
    faults.push({ ...item.origin, key: 'include', got: describeTree(item), problem, expected });
    return [];
  });
}

function withoutInclude(tree: Tree): Tree {
  if (tree.kind !== 'map') return tree;
  const entries = new Map<string, Entry>([...tree.entries].filter(([key]) => key !== 'include'));
  return { ...tree, entries };
}

/**
 * Reads a file and all it includes into one tree. Included files lie under the file that names them,
 * in the order named; a file's own keys win. A file that includes itself, by whatever way, is a fault. `whole` tells
 * whether every file was there: what is missing from a part cannot be judged.
 */
export function includeTree(
  text: string,
  file: string,
  load: Load | undefined,
): TreeReading & { readonly whole: boolean } {
  const faults: Fault[] = [];
  let files = 0;
  let whole = true;
  let characters = text.length;
  let marks = 0;

  const open = (source: string, name: string, above: readonly string[]): Tree | undefined => {
    const { tree, faults: found } = readTree(source, name);
    faults.push(...found);
    if (tree?.kind !== 'map') return tree;
    const include = tree.entries.get('include');
    const before = faults.length;
    const paths = include === undefined ? [] : includedPaths(include.node, faults);
    if (faults.length > before) whole = false;
    let under: Tree | undefined;
    for (const { path, origin } of paths) {
      const full = resolvePath(name, path);
      const report = (problem: string): void => {
        whole = false;
        faults.push({ ...origin, key: 'include', got: JSON.stringify(path), problem });
      };
      files += 1;
      if ([...above, name].includes(full)) report('a file that includes itself');
      else if (above.length + 1 >= limits.depth) report(`included more than ${limits.depth} deep`);
      else if (files > limits.files) report(`more than ${limits.files} included files`);
      else {
        const answer = loadText(load, full, name);
        if ('problem' in answer) {
          report(answer.problem);
          continue;
        }
        characters += answer.text.length;
        if (characters > limits.characters)
          report(`more than ${limits.characters} characters in all files together`);
        else if ((marks += yamlMarks(answer.text)) > limits.marks)
          report(`more than ${limits.marks} line ends, commas, colons and other marks in all files together`);
        else {
          const base = open(answer.text, full, [...above, name]);
          if (base?.kind !== 'map') whole = false;
          else under = under === undefined ? base : mergeTree(under, base);
        }
      }
    }
    const own = withoutInclude(tree);
    return mergeTree(under ?? { kind: 'map', origin: own.origin, entries: new Map() }, own);
  };

  const tree = open(text, file, []);
  return { tree, faults, whole };
}

/** Most characters of all files that one reading opens beside the first. */
const mostCharacters = 64_000_000;

/** Reads as `load` does until one reading has opened more than is ever needed. */
export function boundedLoad(load: Load): Load {
  let characters = 0;
  return (path, from) => {
    const text = load(path, from);
    characters += text.length;
    if (characters > mostCharacters)
      throw new Error(`more than ${mostCharacters} characters in all files together`);
    return text;
  };
}
