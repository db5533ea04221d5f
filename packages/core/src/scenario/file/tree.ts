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
export type Tree =
  | { readonly kind: 'map'; readonly origin: Origin; readonly entries: ReadonlyMap<string, Entry> }
  | { readonly kind: 'list'; readonly origin: Origin; readonly items: readonly Tree[] }
  | {
      readonly kind: 'scalar';
      readonly origin: Origin;
      readonly value: string | number | boolean | null;
      /** As written, for messages. */
      readonly source: string;
    };

/** Path of a value from the root: keys and places in lists. */
export type Path = readonly (string | number)[];

/** A plain value: what a tree says without where. */
export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** The path as people write it: `vessels.tank-1.volume`, `flows[0].rate`. */
export function describePath(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** The plain value of a tree. Keys left empty (`note:`) or set to null count as not written. */
export function plainOf(tree: Tree): Plain {
  if (tree.kind === 'scalar') return tree.value;
  if (tree.kind === 'list') return tree.items.map(plainOf);
  const written = [...tree.entries].filter(([, { node }]) => !isEmpty(node));
  return Object.fromEntries(written.map(([key, { node }]) => [key, plainOf(node)]));
}

/** Whether a value was left out: `key:` with nothing after it, or null. */
export function isEmpty(tree: Tree): boolean {
  return tree.kind === 'scalar' && tree.value === null;
}

/** The value at a path, or undefined. */
export function nodeAt(tree: Tree, path: Path): Tree | undefined {
  let node: Tree | undefined = tree;
  for (const step of path) {
    if (node?.kind === 'map') node = node.entries.get(String(step))?.node;
    else if (node?.kind === 'list' && typeof step === 'number') node = node.items[step];
    else return undefined;
  }
  return node;
}

/** Where the deepest written part of a path stands: the value itself, or the key that should hold it. */
export function originAt(tree: Tree, path: Path): Origin {
  const node = nodeAt(tree, path);
  if (node?.kind === 'scalar') return node.origin;
  for (let length = path.length; length > 0; length -= 1) {
    const key = keyOrigin(tree, path.slice(0, length));
    if (key !== undefined) return key;
  }
  return tree.origin;
}

/** Where the key at the end of a path stands, or the item itself in a list. */
export function keyOrigin(tree: Tree, path: Path): Origin | undefined {
  const parent = nodeAt(tree, path.slice(0, -1));
  const last = path[path.length - 1];
  if (last === undefined) return undefined;
  if (parent?.kind === 'map') return parent.entries.get(String(last))?.origin;
  return nodeAt(tree, path)?.origin;
}

/** What came, short enough for a message. */
export function describeTree(tree: Tree): string {
  if (tree.kind === 'list') return `a list of ${tree.items.length}`;
  if (tree.kind === 'map')
    return tree.entries.size === 0 ? 'an empty map' : `a map with ${[...tree.entries.keys()][0]}`;
  const { source, value } = tree;
  const text = source.length > 60 ? `${source.slice(0, 57)}...` : source;
  return typeof value === 'string' ? JSON.stringify(text) : text;
}
