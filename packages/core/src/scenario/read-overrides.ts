import { createParameters, parametersOf, type Parameters } from '../library/parameters.js';
import { overrideRow } from '../library/override.js';
import { formOf, isOpenGroup, properties } from '../library/properties.js';
import { subjectFaults } from '../library/subject-faults.js';
import { tableOf, type TableRow } from '../library/table-row.js';
import type { Fault } from '../errors.js';
import { compact } from './compact.js';
import type { Load } from './include-tree.js';
import { readTables, type RowPlace } from './read-tables.js';
import { Reader } from './reader.js';
import type { Override } from './scenario.js';
import { parameterSchema } from './schema/start-schema.js';
import { originAt, type Tree } from './tree.js';

/** Most numbers of the tables that one file gives anew. */
const mostOverrides = 5000;

/** The numbers given anew, the tables with them in place, and what is wrong with them. */
export interface OverrideReading {
  readonly overrides: readonly Override[];
  readonly parameters: Parameters;
  readonly faults: readonly Fault[];
  /** What the tables of the user changed, one line a table. */
  readonly notes: readonly string[];
}

/** Reads the section `parameters`, on top of the rows that hold so far; puts each into `rows`. */
function readNumbers(reader: Reader, rows: Map<string, TableRow>): readonly Override[] {
  const keys = reader.keys(['parameters']);
  if (keys.length > mostOverrides)
    reader.fault(['parameters'], 'too many entries', { expected: `at most ${mostOverrides}` }, true);
  return keys.slice(0, mostOverrides).flatMap((id): Override[] => {
    const path = ['parameters', id];
    const given = reader.parse(parameterSchema, path);
    if (given === undefined) return [];
    const numbers = typeof given === 'number' ? { value: given } : given;
    const override = compact({ id, ...numbers, where: reader.where(path) });
    const { faults, row } = overrideRow(override, rows);
    for (const { problem, got, expected, nearest } of faults) {
      const unknown = !rows.has(id);
      reader.fault(path, problem, compact({ got: unknown ? undefined : got, expected, nearest }), unknown);
    }
    if (row !== undefined) rows.set(id, row);
    return faults.length > 0 ? [] : [override];
  });
}

/**
 * Rows in place of those that a faulty table did not give, so that the rest of the file can be read and all its
 * faults be told: they never reach a run.
 */
function standIns(ids: Iterable<string>, rows: ReadonlyMap<string, TableRow>): TableRow[] {
  const subjects = new Set([...ids].map((id) => id.split('.').slice(0, 2).join('.')));
  return [...subjects].flatMap((subject) => {
    const [group] = subject.split('.');
    if (!isOpenGroup(group)) return [];
    return properties[group].needed.flatMap((property): TableRow[] => {
      const id = `${subject}.${property}`;
      if (rows.has(id)) return [];
      const { unit, high } = formOf(group, property);
      const number = { value: high, low: high, high, unit, distribution: 'fixed' } as const;
      const rest = { conditions: 'stand-in', source: 'scenario', page: '-', mark: 'U' } as const;
      return [{ table: tableOf[group], id, ...number, ...rest }];
    });
  });
}

/**
 * Reads the tables of the user and the section `parameters`. Comes first, since defaults of other sections are
 * numbers of the tables. Single numbers win over tables, later tables over earlier.
 */
export function readOverrides(
  tree: Tree,
  options: { readonly load?: Load; readonly tables?: readonly string[] },
): OverrideReading {
  const reader = new Reader(tree, createParameters(), options.load);
  const tables = readTables(reader, options);
  const rows = new Map(tables.rows);
  const numbers = readNumbers(reader, rows);
  const overrides = [...tables.overrides, ...numbers];
  const faults = [...reader.faults, ...tables.faults];
  const named = new Map<string, RowPlace | undefined>(tables.places);
  for (const { id, ...fault } of subjectFaults(rows, tables.places)) {
    const place = named.get(id) ?? originAt(tree, ['parameters', id]);
    faults.push({ ...place, key: id.split('.').slice(0, 2).join('.'), ...fault });
  }
  const sound = faults.length === 0;
  const standing = sound ? [] : standIns(tables.places.keys(), rows);
  const parameters = sound
    ? createParameters(overrides)
    : parametersOf(new Map([...rows.values(), ...standing].map((row) => [row.id, row])));
  return { overrides, parameters, faults, notes: tables.notes };
}
