import { type Fault, InputError } from '../base/faults.js';
import type { Given, NumberInUse, Override } from './own-row.js';
import { nearest } from '../base/nearest.js';
import { draw } from './distributions.js';
import { names, type SubjectGroup } from './names.js';
import { overrideRow } from './override.js';
import { rangedOf } from './ranged-row.js';
import { subjectFaults } from './subject-faults.js';
import { tableRows } from './table-rows.js';
import { tableValues } from './table-values.js';
import type { TableRow } from './table-row.js';

/** The numbers of the science for one run, in internal units. Remembers which were read. */
export interface Parameters {
  /** The number with this id. Throws RangeError with the nearest id when there is none. */
  value(id: string): number;
  /** The number and what the user gave in its place; does not count as reading. Throws as `value` does. `rowOf` tells the rest. */
  number(id: string): NumberInUse;
  /** Whether there is a number with this id, ours or the user's. */
  has(id: string): boolean;
  /** Every id in use, ours in the order of the tables, then what the user added. */
  ids(): Iterable<string>;
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
  return givenParameters(overrides, checked(overrides));
}

/**
 * The numbers of the tables with those of a scenario that was checked in their place or beside them; nothing is checked again.
 * Throws RangeError for an id that neither the tables nor the user know.
 */
export function givenParameters(
  overrides: readonly Override[],
  warnings: readonly string[] = [],
): Parameters {
  const values = new Map(tableValues);
  const given = new Map<string, Override[]>();
  for (const override of overrides) {
    const { id, value, row } = override;
    if (row === undefined && !values.has(id)) throw new RangeError(`no number "${id}" in the tables`);
    values.set(id, value);
    given.set(id, [...(given.get(id) ?? []), override]);
  }
  return parametersOf(values, given, warnings);
}

/**
 * Numbers drawn at random: each row that is not fixed takes one draw from its distribution, in the
 * order of the tables. A number the user gives without a range stays as given.
 * `random` gives uniform numbers in [0, 1). Throws as `createParameters` does.
 */
export function drawParameters(random: () => number, overrides: readonly Override[] = []): Parameters {
  const given = createParameters(overrides);
  const values = new Map<string, number>();
  for (const id of given.ids()) {
    const row = rangedOf(given.number(id));
    if (row.distribution !== 'fixed') values.set(id, draw(row, random));
  }
  return parametersAt(values, given);
}

/**
 * The numbers of others with some `values` (in the unit of their row) put in their place, by id; what else is known of them stays.
 * Nothing is checked again. Throws RangeError for an unknown id.
 */
export function parametersAt(values: ReadonlyMap<string, number>, others: Parameters): Parameters {
  for (const id of values.keys()) others.number(id);
  return parametersFrom({
    ...others,
    find: (id) => {
      const found = others.has(id) ? others.number(id) : undefined;
      const value = values.get(id);
      return found === undefined || value === undefined ? found : { ...found, value };
    },
  });
}

/** The numbers of others with some rows of an extension in their place or beside them, taken as they are: nothing is checked. */
export function withRows(rows: ReadonlyMap<string, TableRow>, others: Parameters): Parameters {
  return parametersFrom({
    ...others,
    find: (id) => {
      const row = rows.get(id);
      if (row !== undefined) return { id, value: row.value, given: [row] };
      return others.has(id) ? others.number(id) : undefined;
    },
    has: (id) => rows.has(id) || others.has(id),
    ids: function* () {
      yield* others.ids();
      for (const id of rows.keys()) if (!others.has(id)) yield id;
    },
  });
}

/** What is unusual about numbers that the user gives. Throws InputError with what is wrong with them. */
function checked(overrides: readonly Override[]): readonly string[] {
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
  return warnings;
}

/** These numbers, taken as they are: nothing is checked. */
export function parametersOf(
  values: ReadonlyMap<string, number>,
  given: ReadonlyMap<string, readonly Given[]> = new Map(),
  warnings: readonly string[] = [],
): Parameters {
  const subjects = new Map<SubjectGroup, readonly string[]>();
  return parametersFrom({
    find: (id) => {
      const value = values.get(id);
      return value === undefined ? undefined : { id, value, given: given.get(id) ?? [] };
    },
    has: (id) => values.has(id),
    ids: () => values.keys(),
    subjects: (group) => {
      const found = subjects.get(group) ?? names(group, values.keys());
      subjects.set(group, found);
      return found;
    },
    warnings,
  });
}

/** Where numbers come from. */
interface NumberSource extends Pick<Parameters, 'has' | 'ids' | 'subjects' | 'warnings'> {
  find(id: string): NumberInUse | undefined;
}

function parametersFrom(source: NumberSource): Parameters {
  const read = new Set<string>();
  const number = (id: string): NumberInUse => {
    const found = source.find(id);
    if (found !== undefined) return found;
    const near = nearest(id, source.ids());
    const hint = near === undefined ? '' : `; did you mean ${near}?`;
    throw new RangeError(`no number "${id}" in the tables${hint}`);
  };
  return {
    value(id) {
      const { value } = number(id);
      read.add(id);
      return value;
    },
    number,
    has: (id) => source.has(id),
    ids: () => source.ids(),
    subjects: (group) => source.subjects(group),
    used: () => [...read].sort(),
    warnings: source.warnings,
  };
}
