import { type Fault, InputError } from '../base/faults.js';
import type { Override } from './own-row.js';
import { nearest } from '../base/nearest.js';
import { draw } from './distributions.js';
import { names, type SubjectGroup } from './names.js';
import { overriddenRow } from './overridden-row.js';
import { overrideRow } from './override.js';
import { subjectFaults } from './subject-faults.js';
import { tableRows } from './table-rows.js';
import type { TableRow } from './table-row.js';

/** The numbers of the science for one run, in internal units. Remembers which were read. */
export interface Parameters {
  /** The number with this id. Throws RangeError with the nearest id when there is none. */
  value(id: string): number;
  /** The whole row, with the value in use; does not count as reading. Throws as `value` does. */
  row(id: string): TableRow;
  /** Whether there is a number with this id, ours or the user's. */
  has(id: string): boolean;
  /** Every row in use, ours in the order of the tables, then what the user added. */
  rows(): Iterable<TableRow>;
  /** The subjects of a group (`names`), those that the user added with them. */
  subjects(group: SubjectGroup): readonly string[];
  /** Ids read so far, sorted. */
  used(): string[];
  /** What is unusual about the numbers the user gave: one line each. */
  readonly warnings: readonly string[];
}

/**
 * The numbers of the tables, with those the user gives in their place or beside them: rows of tables of the
 * user first, then single numbers, in the order given.
 * Throws InputError with a fault for each unknown or repeated id, each value that makes no sense, and each
 * species, crop, medium ... that lacks a number the model reads.
 */
export function createParameters(overrides: readonly Override[] = []): Parameters {
  const { rows, warnings } = applyOverrides(overrides);
  return parametersOf(rows, warnings);
}

/** The numbers of the tables with those of a scenario that was checked in their place or beside them; nothing is checked again. */
export function givenParameters(overrides: readonly Override[]): Parameters {
  const rows = new Map(tableRows);
  for (const override of overrides) rows.set(override.id, overriddenRow(override, rows));
  return parametersOf(rows);
}

/**
 * Numbers drawn at random: each row that is not fixed takes one draw from its distribution, in the
 * order of the tables. A number the user gives without a range stays as given.
 * `random` gives uniform numbers in [0, 1). Throws as `createParameters` does.
 */
export function drawParameters(random: () => number, overrides: readonly Override[] = []): Parameters {
  const { rows, warnings } = applyOverrides(overrides);
  for (const [id, row] of rows) {
    if (row.distribution !== 'fixed') rows.set(id, { ...row, value: draw(row, random) });
  }
  return parametersOf(rows, warnings);
}

/**
 * The numbers of others with some `values` (in the unit of their row) put in their place, by id; rows keep range, source and mark.
 * Nothing is checked again. Throws RangeError for an unknown id.
 */
export function parametersAt(values: ReadonlyMap<string, number>, others: Parameters): Parameters {
  const drawn = new Map<string, TableRow>();
  for (const [id, value] of values) drawn.set(id, { ...others.row(id), value });
  return withRows(drawn, others);
}

/** The numbers of others with some rows in their place or beside them, taken as they are: nothing is checked. */
export function withRows(rows: ReadonlyMap<string, TableRow>, others: Parameters): Parameters {
  return parametersFrom({
    get: (id) => rows.get(id) ?? (others.has(id) ? others.row(id) : undefined),
    has: (id) => rows.has(id) || others.has(id),
    rows: function* () {
      for (const row of others.rows()) yield rows.get(row.id) ?? row;
      for (const row of rows.values()) if (!others.has(row.id)) yield row;
    },
    subjects: (group) => others.subjects(group),
    warnings: others.warnings,
  });
}

function applyOverrides(overrides: readonly Override[]): { rows: Map<string, TableRow>; warnings: string[] } {
  const rows = new Map(tableRows);
  const faults: Fault[] = [];
  const warnings: string[] = [];
  const seen = new Set<string>();
  for (const override of overrides) {
    // A number of the scenario may stand on a row of a table of the user; two of one kind may not.
    const kind = `${override.id} ${override.row === undefined ? 'number' : 'row'}`;
    if (seen.has(kind)) {
      faults.push({ key: override.where ?? override.id, problem: `${override.id} is given twice` });
    }
    seen.add(kind);
    const outcome = overrideRow(override, rows);
    faults.push(...outcome.faults);
    warnings.push(...outcome.warnings);
    if (outcome.row !== undefined) rows.set(override.id, outcome.row);
  }
  if (faults.length === 0) {
    for (const { id, ...fault } of subjectFaults(rows)) {
      faults.push({ ...fault, key: rows.get(id)?.given ?? id });
    }
  }
  if (faults.length > 0) throw new InputError(faults);
  return { rows, warnings };
}

/** The numbers in these rows, taken as they are: nothing is checked. */
export function parametersOf(
  rows: ReadonlyMap<string, TableRow>,
  warnings: readonly string[] = [],
): Parameters {
  const subjects = new Map<SubjectGroup, readonly string[]>();
  return parametersFrom({
    get: (id) => rows.get(id),
    has: (id) => rows.has(id),
    rows: () => rows.values(),
    subjects: (group) => {
      const found = subjects.get(group) ?? names(group, rows.values());
      subjects.set(group, found);
      return found;
    },
    warnings,
  });
}

/** Where numbers come from. */
interface NumberSource extends Pick<Parameters, 'has' | 'rows' | 'subjects' | 'warnings'> {
  get(id: string): TableRow | undefined;
}

function parametersFrom(source: NumberSource): Parameters {
  const read = new Set<string>();
  const row = (id: string): TableRow => {
    const found = source.get(id);
    if (found !== undefined) return found;
    const near = nearest(
      id,
      Array.from(source.rows(), (each) => each.id),
    );
    const hint = near === undefined ? '' : `; did you mean ${near}?`;
    throw new RangeError(`no number "${id}" in the tables${hint}`);
  };
  return {
    value(id) {
      const { value } = row(id);
      read.add(id);
      return value;
    },
    row,
    has: (id) => source.has(id),
    rows: () => source.rows(),
    subjects: (group) => source.subjects(group),
    used: () => [...read].sort(),
    warnings: source.warnings,
  };
}
