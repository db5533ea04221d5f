import type { Override } from './own-row.js';
import { formOf, isOpenGroup, type PropertyForm } from './properties.js';
import { tableOf, type TableRow } from './table-row.js';

/** The row that stands for an id: that of the tables, or for a new subject the form of its property. */
export function formFor(
  id: string,
  rows: ReadonlyMap<string, TableRow>,
): PropertyForm & { readonly table: string } {
  const base = rows.get(id);
  if (base !== undefined) return base;
  const [group, , property] = id.split('.');
  if (!isOpenGroup(group)) throw new RangeError(`no number "${id}" in the tables`);
  return { ...formOf(group, property), table: tableOf[group] };
}

/** The row that a number given by the user makes of one of the rows, or beside them; whether it makes sense is not asked. */
export function overriddenRow(override: Override, rows: ReadonlyMap<string, TableRow>): TableRow {
  const { id, value, row: given, low = value, high = value } = override;
  if (given !== undefined) {
    const { table, unit } = formFor(id, rows);
    return { ...given, table, id, unit, value, low, high, given: override.where ?? 'a table' };
  }
  const base = rows.get(id);
  if (base === undefined) throw new RangeError(`no number "${id}" in the tables`);
  const ranged = low < high;
  const distribution = ranged ? (base.distribution === 'fixed' ? 'uniform' : base.distribution) : 'fixed';
  const stated = { conditions: 'given by the scenario', source: 'scenario', page: '-', mark: 'U' } as const;
  return { ...base, value, low, high, distribution, ...stated, given: override.where ?? 'the scenario' };
}
