import * as z from 'zod';
import { names } from '../../library/names.js';
import { nearestSubject } from '../../library/other-names.js';
import { idFault, overrideRow } from '../../library/override.js';
import type { Override } from '../../library/own-row.js';
import { isOpenGroup } from '../../library/properties.js';
import { originOf } from '../../library/origins.js';
import type { RangedRow } from '../../library/table-row.js';
import { compact, type Reader } from '../file/reader.js';
import type { Path } from '../file/tree.js';
import { word } from '../file/values.js';
import { parameterSchema } from './start.js';

/** A species, crop ... of one's own that is like one of the tables but for a few numbers. */
export const likenessSchema = z
  .object({ like: word('one of the same group in the tables: its numbers hold where no other is given') })
  .catchall(parameterSchema)
  .meta({ description: 'a species, crop, medium ... of your own' });

/** Our rows with those of the user in place, and what the user gave last of each. */
export interface RowsSoFar {
  readonly rows: Map<string, RangedRow>;
  readonly given: Map<string, Override>;
}

/** The overrides that make a subject `id`, such as `crop.tatsoi`, from another; each goes into `soFar`. Faults where it cannot be. */
export function readLikeness(reader: Reader, path: Path, id: string, soFar: RowsSoFar): readonly Override[] {
  const given = reader.parse(likenessSchema, path);
  if (given === undefined) return [];
  const { like, ...own } = given;
  const { rows } = soFar;
  const put = (override: Override, row: RangedRow): void => {
    rows.set(override.id, row);
    soFar.given.set(override.id, override);
  };
  const [group, subject, ...more] = id.split('.');
  if (!isOpenGroup(group) || subject === undefined || more.length > 0) {
    reader.fault(path, 'nothing that can be like another', { expected: 'a key such as crop.tatsoi' }, true);
    return [];
  }
  if (names(group, rows.keys()).includes(subject)) {
    reader.fault(path, `${id} is in the tables already`, { expected: 'a new name' }, true);
    return [];
  }
  const known = names(group, rows.keys());
  if (!known.includes(like)) {
    const near = nearestSubject(like, known);
    const hint = near === undefined ? { expected: `one of ${known.join(', ')}` } : { nearest: near };
    reader.fault([...path, 'like'], `unknown ${group}`, hint);
    return [];
  }
  const where = reader.where(path);
  const prefix = `${group}.${like}.`;
  const taken = [...rows.values()].filter((row) => row.id.startsWith(prefix));
  const overrides = new Map<string, Override>();
  for (const { id: from, value, low, high, unit, distribution } of taken) {
    const before = soFar.given.get(from);
    const origin = originOf({ id: from, value, given: before === undefined ? [] : [before] });
    const said = { unit, distribution, conditions: `as of ${like}`, ...origin };
    const to = `${id}.${from.slice(prefix.length)}`;
    const copy = { id: to, value, low, high, row: said, where };
    overrides.set(to, copy);
    const { row: copied } = overrideRow(copy, rows);
    if (copied !== undefined) put(copy, copied);
  }
  for (const [property, number] of Object.entries(own)) {
    const to = `${id}.${property}`;
    const fault = overrides.has(to)
      ? undefined
      : (idFault(to, rows) ?? { problem: `${like} has no such number` });
    if (fault !== undefined) {
      reader.fault([...path, property], fault.problem, compact({ ...fault, problem: undefined }), true);
      continue;
    }
    const numbers = typeof number === 'number' ? { value: number } : number;
    const unit = overrides.get(to)?.row?.unit ?? '1';
    const ranged = typeof number !== 'number' && (number.low !== undefined || number.high !== undefined);
    const said = {
      ...{ unit, conditions: 'given by the scenario', source: 'scenario', page: '-', mark: 'U' as const },
      distribution: ranged ? ('uniform' as const) : ('fixed' as const),
    };
    overrides.set(to, compact({ id: to, ...numbers, row: said, where: reader.where([...path, property]) }));
  }
  return [...overrides.values()].filter((override) => {
    const { faults, row } = overrideRow(override, rows);
    const property = override.id.slice(id.length + 1);
    for (const { problem, got, expected } of faults)
      reader.fault([...path, property], problem, compact({ got, expected }));
    if (row !== undefined) put(override, row);
    return faults.length === 0;
  });
}
