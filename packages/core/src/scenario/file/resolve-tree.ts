import type { UsedDefault } from './reader.js';
import { describePath, plainOf, type Path, type Plain, type Tree } from './tree.js';

/**
 * One `value` of a resolved file, as it is written there, and where it came from: `file:line`, `--set`, `--days` or
 * `default`.
 */
export interface ResolvedValue {
  readonly key: string;
  readonly value: string | number | boolean;
  readonly origin: string;
}

/** A file with everything it includes, sets and leaves to defaults written out. */
export interface ResolvedTree {
  /** As plain values: written as YAML or JSON it reads to the same scenario. */
  readonly plain: Readonly<Record<string, Plain>>;
  /** The same without the defaults: what was written, in the file and those it includes, and set beside it. */
  readonly written: Readonly<Record<string, Plain>>;
  /** Every single value in order with where it came from. */
  readonly values: readonly ResolvedValue[];
}

type Box = Record<string, Plain>;

function isBox(value: Plain | undefined): value is Box {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Puts a value at a path of a plain tree that nobody else holds, opening maps on the way. */
function put(root: Box, path: Path, value: Plain): void {
  let at = root as Record<string | number, Plain>;
  for (const step of path.slice(0, -1)) {
    const below = Object.hasOwn(at, step) ? at[step] : undefined;
    if (typeof below !== 'object' || below === null) at[step] = {};
    at = at[step] as Record<string | number, Plain>;
  }
  const last = path[path.length - 1];
  if (last !== undefined) at[last] = value;
}

/** Where each single value of a tree was written. */
function originsOf(tree: Tree, path: Path, into: Map<string, string>): void {
  if (tree.kind === 'map') for (const [key, { node }] of tree.entries) originsOf(node, [...path, key], into);
  else if (tree.kind === 'list')
    tree.items.forEach((item, index) => {
      originsOf(item, [...path, index], into);
    });
  else
    into.set(
      describePath(path),
      [tree.origin.file, tree.origin.line].filter((part) => part !== undefined).join(':'),
    );
}

function valuesOf(plain: Plain, path: Path, origins: ReadonlyMap<string, string>): ResolvedValue[] {
  if (plain === null) return [];
  if (Array.isArray(plain))
    return (plain as readonly Plain[]).flatMap((item, index) => valuesOf(item, [...path, index], origins));
  if (isBox(plain))
    return Object.entries(plain).flatMap(([key, item]) => valuesOf(item, [...path, key], origins));
  const key = describePath(path);
  return [{ key, value: plain as string | number | boolean, origin: origins.get(key) ?? 'default' }];
}

/**
 * Lays the defaults used into a tree. A default that came out differently for different readers of the
 * same path (oxygen at saturation in vessels of different temperature) stays unwritten.
 */
export function resolveTree(
  tree: Tree,
  defaults: readonly UsedDefault[],
  over: { readonly days?: number },
): ResolvedTree {
  const found = new Map<string, UsedDefault | undefined>();
  for (const used of defaults) {
    const key = describePath(used.path);
    const same = !found.has(key) || JSON.stringify(found.get(key)?.value) === JSON.stringify(used.value);
    found.set(key, same ? used : undefined);
  }
  const [whole, written] = [plainOf(tree), plainOf(tree)];
  const plain = isBox(whole) ? whole : {};
  for (const used of found.values()) if (used !== undefined) put(plain, used.path, used.value);
  const origins = new Map<string, string>();
  originsOf(tree, [], origins);
  if (over.days !== undefined) {
    put(plain, ['days'], over.days);
    origins.set('days', '--days');
  }
  return { plain, written: isBox(written) ? written : {}, values: valuesOf(plain, [], origins) };
}
