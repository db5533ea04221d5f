import * as z from 'zod';
import { type Fault, InputError } from '../../base/faults.js';
import { overrideRow } from '../../library/override.js';
import { createParameters, type Parameters, parametersOf } from '../../library/parameters.js';
import { formOf, isOpenGroup, properties } from '../../library/properties.js';
import { readTable } from '../../library/read-table.js';
import { subjectFaults } from '../../library/subject-faults.js';
import type { RangedRow } from '../../library/table-row.js';
import { tableRows } from '../../library/table-rows.js';
import { kindComplaint } from '../file/complaint.js';
import { type Load, loadText, resolvePath } from '../file/include-tree.js';
import { compact, Reader } from '../file/reader.js';
import { nodeAt, originAt, type Path, type Tree } from '../file/tree.js';
import { word } from '../file/values.js';
import type { Override } from '../../library/own-row.js';
import { readLikeness, type RowsSoFar } from './likeness.js';
import { parameterSchema } from './start.js';

const tables = z
  .union([word('a file name'), z.array(word('a file name'))], {
    error: ({ input }) => kindComplaint(input, 'a file name such as "my-numbers.tsv", or a list of them'),
  })
  .meta({
    description:
      'tables of your own numbers (TSV), in place of those of the library or beside them; default: none',
  });

/** The key `tables`. */
export const tablesSchema = tables.optional();

/** Most tables of one scenario. */
const mostTables = 32;

/** Where a row of a table of the user stands. */
interface RowPlace {
  readonly file: string;
  readonly line: number;
}

/** The rows of all tables of the user, a later table winning over an earlier. */
interface TablesReading {
  readonly overrides: readonly Override[];
  /** Our rows with those in place. */
  readonly rows: ReadonlyMap<string, RangedRow>;
  /** Where each id was given, those of faulty rows too. */
  readonly places: ReadonlyMap<string, RowPlace>;
  readonly faults: readonly Fault[];
  readonly notes: readonly string[];
}

interface Named {
  readonly file: string;
  /** The file or the option that names it. */
  readonly from: string;
  /** Says what is wrong with the file as a whole. */
  readonly report: (problem: string) => Fault;
}

/** The tables that the file names, seen from the file that names them. */
function namedTables(reader: Reader): readonly Named[] {
  const given = reader.parse(tablesSchema, ['tables']);
  if (given === undefined) return [];
  const list = nodeAt(reader.tree, ['tables'])?.kind === 'list';
  const files = typeof given === 'string' ? [given] : given;
  if (files.length > mostTables) {
    reader.fault(['tables'], 'too many entries', {
      got: String(files.length),
      expected: `at most ${mostTables}`,
    });
    return [];
  }
  return files.map((file, index) => {
    const path: Path = list ? ['tables', index] : ['tables'];
    const origin = originAt(reader.tree, path);
    const report = (problem: string): Fault => ({
      ...origin,
      key: 'tables',
      got: JSON.stringify(file),
      problem,
    });
    return { file: resolvePath(origin.file, file), from: origin.file, report };
  });
}

function noteOf(file: string, rows: readonly Override[]): string {
  const added = rows.filter(({ id }) => !tableRows.has(id));
  const subjects = [...new Set(added.map(({ id }) => id.split('.').slice(0, 2).join('.')))];
  const replaced = rows.length - added.length;
  const parts = [
    `${replaced} ${replaced === 1 ? 'number' : 'numbers'} in place of ours`,
    ...(added.length === 0 ? [] : [`${added.length} new (${subjects.join(', ')})`]),
  ];
  return `${file}: ${parts.join(', ')}`;
}

/**
 * Reads the tables that a scenario names under `tables`, then those given beside it. Faults of the key go to the
 * reader, faults of the tables into the answer, each with file, line and column.
 */
function readTables(
  reader: Reader,
  options: { readonly load?: Load; readonly tables?: readonly string[] },
): TablesReading {
  const beside = (options.tables ?? []).map((file): Named => ({
    file,
    from: '--tables',
    report: (problem) => ({ file: '--tables', got: JSON.stringify(file), problem }),
  }));
  const rows = new Map(tableRows);
  const found = new Map<string, Override>();
  const places = new Map<string, RowPlace>();
  const faults: Fault[] = [];
  const notes: string[] = [];
  for (const { file, from, report } of [...namedTables(reader), ...beside]) {
    const answer = loadText(options.load, file, from);
    if ('problem' in answer) {
      faults.push(report(answer.problem));
      continue;
    }
    const reading = readTable(answer.text, file, rows);
    faults.push(...reading.faults);
    for (const [id, line] of reading.lines) places.set(id, { file, line });
    for (const override of reading.rows) {
      found.delete(override.id);
      found.set(override.id, override);
      const { row } = overrideRow(override, rows);
      if (row !== undefined) rows.set(override.id, row);
    }
    notes.push(noteOf(file, reading.rows));
  }
  return { overrides: [...found.values()], rows, places, faults, notes };
}

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

/** Reads the section `parameters`, on top of the rows that hold so far; puts each into `soFar`. */
function readNumbers(reader: Reader, soFar: RowsSoFar): readonly Override[] {
  const { rows } = soFar;
  const keys = reader.keys(['parameters']);
  if (keys.length > mostOverrides)
    reader.fault(['parameters'], 'too many entries', { expected: `at most ${mostOverrides}` }, true);
  return keys.slice(0, mostOverrides).flatMap((id): Override[] => {
    const path = ['parameters', id];
    if (reader.has([...path, 'like'])) return [...readLikeness(reader, path, id, soFar)];
    const given = reader.parse(parameterSchema, path);
    if (given === undefined) return [];
    const numbers = typeof given === 'number' ? { value: given } : given;
    const override = compact({ id, ...numbers, where: reader.where(path) });
    const { faults, row } = overrideRow(override, rows);
    for (const { problem, got, expected, nearest } of faults) {
      const unknown = !rows.has(id);
      reader.fault(path, problem, compact({ got: unknown ? undefined : got, expected, nearest }), unknown);
    }
    if (row !== undefined) {
      rows.set(id, row);
      soFar.given.set(id, override);
    }
    return faults.length > 0 ? [] : [override];
  });
}

/**
 * Values in place of those that a faulty table did not give, so that the rest of the file can be read and all its
 * faults be told: they never reach a run.
 */
function standIns(
  ids: Iterable<string>,
  rows: ReadonlyMap<string, RangedRow>,
): (readonly [string, number])[] {
  const subjects = new Set([...ids].map((id) => id.split('.').slice(0, 2).join('.')));
  return [...subjects].flatMap((subject) => {
    const [group] = subject.split('.');
    if (!isOpenGroup(group)) return [];
    return properties[group].needed.flatMap((property): (readonly [string, number])[] => {
      const id = `${subject}.${property}`;
      return rows.has(id) ? [] : [[id, formOf(group, property).high]];
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
  const reader = new Reader(tree, options.load);
  const tables = readTables(reader, options);
  const rows = new Map(tables.rows);
  const given = new Map(tables.overrides.map((override) => [override.id, override]));
  const numbers = readNumbers(reader, { rows, given });
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
    : parametersOf(new Map([...Array.from(rows, ([id, { value }]) => [id, value] as const), ...standing]));
  return { overrides, parameters, faults, notes: tables.notes };
}

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
