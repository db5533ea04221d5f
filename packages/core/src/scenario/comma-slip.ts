import type { Fault } from '../errors.js';
import { isEmpty, nodeAt, type Path, type Tree } from './tree.js';

/**
 * What `{ volume: 0,6 m3 }` says to YAML is `{ volume: 0, "6 m3": null }`. Where a number lacks its unit and the next key
 * is such a rest of a number, the comma is the fault.
 */
export function commaSlip(tree: Tree, path: Path, problem: string): Fault | undefined {
  if (problem !== 'a number without a unit') return undefined;
  const map = nodeAt(tree, path.slice(0, -1));
  const value = nodeAt(tree, path);
  if (map?.kind !== 'map' || value?.kind !== 'scalar') return undefined;
  const keys = [...map.entries.keys()];
  const next = keys[keys.indexOf(String(path[path.length - 1])) + 1];
  const rest = next === undefined ? undefined : map.entries.get(next)?.node;
  if (next === undefined || !/^\d/.test(next) || rest === undefined || !isEmpty(rest)) return undefined;
  return { problem: 'a comma in a number: write a decimal point', got: `${value.source},${next}` };
}
