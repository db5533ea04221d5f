import type { NumberInUse, Override } from './own-row.js';
import { formOf, isOpenGroup, type PropertyForm } from './properties.js';
import { tableOf, type RangedRow } from './table-row.js';
import { tableRows } from './table-rows.js';

/** The row that stands for an id: that of the tables, or for a new subject the form of its property. */
export function formFor(id: string, base: RangedRow | undefined): PropertyForm & { readonly table: string } {
  if (base !== undefined) return base;
  const [group, , property] = id.split('.');
  if (!isOpenGroup(group)) throw new RangeError(`no number "${id}" in the tables`);
  return { ...formOf(group, property), table: tableOf[group] };
}

const whereGiven = ({ where, row }: Override): string =>
  where ?? (row === undefined ? 'the scenario' : 'a table');

/** Where the user gave a number, such as `my-numbers.tsv:3`; undefined: it is ours. */
export function givenIn({ given }: NumberInUse): string | undefined {
  const last = given.at(-1);
  return last === undefined || 'table' in last ? last?.given : whereGiven(last);
}

/** The row that a number given by the user makes of the one before it, or beside ours; whether it makes sense is not asked. */
export function rangedRow(override: Override, base: RangedRow | undefined): RangedRow {
  const { id, value, row: given, low = value, high = value } = override;
  if (given !== undefined) {
    const { table, unit } = formFor(id, base);
    const numbers = { value, unit, low, high, distribution: given.distribution };
    return { table, id, ...numbers, given: whereGiven(override) };
  }
  if (base === undefined) throw new RangeError(`no number "${id}" in the tables`);
  const ranged = low < high;
  const distribution = ranged ? (base.distribution === 'fixed' ? 'uniform' : base.distribution) : 'fixed';
  return { ...base, value, low, high, distribution, given: whereGiven(override) };
}

/** A number in use with its unit and range: the user's, where one was given. */
export function rangedOf({ id, value, given }: NumberInUse): RangedRow {
  let row = tableRows.get(id);
  for (const each of given) row = 'table' in each ? each : rangedRow(each, row);
  if (row === undefined) throw new RangeError(`no number "${id}" in the tables`);
  return row.value === value ? row : { ...row, value };
}
