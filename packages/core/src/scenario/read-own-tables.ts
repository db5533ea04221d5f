import { InputError } from '../errors.js';
import type { Load } from './include-tree.js';
import { readOverrides } from './read-overrides.js';
import type { Override } from './scenario.js';

/**
 * Reads tables of the user without a scenario.
 * @param tables paths as `load` takes them, a later one winning over an earlier
 * @returns what `createParameters` takes, and what the tables changed, one line each
 * @throws InputError with every fault, each with file, line and column
 */
export function readOwnTables(
  tables: readonly string[],
  load: Load,
): { readonly overrides: readonly Override[]; readonly notes: readonly string[] } {
  const nothing = { kind: 'map', origin: { file: '--tables' }, entries: new Map() } as const;
  const { overrides, faults, notes } = readOverrides(nothing, { load, tables });
  if (faults.length > 0) throw new InputError(faults);
  return { overrides, notes };
}
