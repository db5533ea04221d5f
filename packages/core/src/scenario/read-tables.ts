import type { Fault } from '../errors.js';
import { overrideRow } from '../library/override.js';
import { readTable } from '../library/read-table.js';
import { tableRows } from '../library/table-rows.js';
import type { TableRow } from '../library/table-row.js';
import { loadText, resolvePath, type Load } from './include-tree.js';
import type { Reader } from './reader.js';
import type { Override } from './scenario.js';
import { tablesSchema } from './schema/tables-schema.js';
import { nodeAt, originAt, type Path } from './tree.js';

/** Most tables of one scenario. */
const mostTables = 32;

/** Where a row of a table of the user stands. */
export interface RowPlace {
  readonly file: string;
  readonly line: number;
}

/** The rows of all tables of the user, a later table winning over an earlier. */
export interface TablesReading {
  readonly overrides: readonly Override[];
  /** Our rows with those in place. */
  readonly rows: ReadonlyMap<string, TableRow>;
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
export function readTables(
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
