import type { Entry, Tree } from './tree.js';

/**
 * Lays one tree over another: maps merge key by key, anything else (lists too) is replaced. A key
 * set to null in `over` takes the key of `under` away. Every value keeps where it was written.
 */
export function mergeTree(under: Tree, over: Tree): Tree {
  if (under.kind !== 'map' || over.kind !== 'map') return over;
  const entries = new Map<string, Entry>(under.entries);
  for (const [key, entry] of over.entries) {
    const below = under.entries.get(key);
    const node = below === undefined ? entry.node : mergeTree(below.node, entry.node);
    entries.set(key, { origin: entry.origin, node });
  }
  return { kind: 'map', origin: over.origin, entries };
}
