import type { Fault } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { names } from './names.js';
import { isOpenGroup, properties, type OpenGroup } from './properties.js';
import { tableRows } from './table-rows.js';
import type { RangedRow } from './table-row.js';

/** A fault of a species, crop ... as a whole, and the row that stands for it. */
export interface SubjectFault extends Fault {
  readonly id: string;
}

/** Pairs of properties of which the first must be less than the second (`<`) or no more (`<=`). */
const order: Partial<Record<OpenGroup, readonly (readonly [string, '<' | '<=', string])[]>> = {
  fish: [
    ['temperature-low', '<', 'temperature-high'],
    ['temperature-low', '<', 'temperature-optimum-low'],
    ['temperature-optimum-low', '<=', 'temperature-optimum-high'],
    ['temperature-optimum-high', '<', 'temperature-high'],
  ],
  crop: [
    ['base-temperature', '<', 'optimum-temperature'],
    ['ph-low', '<', 'ph-high'],
  ],
};

/** Whether a row of the user varies: then it is held to its order wherever it is drawn. */
const varies = ({ given, distribution }: RangedRow): boolean =>
  given !== undefined && distribution !== 'fixed';

function* missing(
  rows: ReadonlyMap<string, RangedRow>,
  group: OpenGroup,
  subject: string,
  first: RangedRow,
  faulty: ReadonlySet<string> | ReadonlyMap<string, unknown>,
): Generator<SubjectFault> {
  const has = (property: string): boolean => {
    const id = `${group}.${subject}.${property}`;
    return rows.has(id) || faulty.has(id);
  };
  const { needed, together = [] } = properties[group];
  const wanted = together.some(has) ? [...needed, ...together] : needed;
  const lacks = wanted.filter((property) => !has(property));
  if (lacks.length === 0) return;
  // One row alone is likely a name misspelt; a subject with most of its rows is meant.
  const near = lacks.length * 2 > needed.length ? nearest(subject, names(group)) : undefined;
  yield {
    id: first.id,
    problem: `${group} ${subject} lacks ${lacks.length} of the numbers that the model reads`,
    expected: `also rows for ${lacks.join(', ')}`,
    ...(near === undefined ? {} : { nearest: near }),
  };
}

function* disordered(
  rows: ReadonlyMap<string, RangedRow>,
  group: OpenGroup,
  subject: string,
): Generator<SubjectFault> {
  for (const [less, relation, more] of order[group] ?? []) {
    const a = rows.get(`${group}.${subject}.${less}`);
    const b = rows.get(`${group}.${subject}.${more}`);
    if (a === undefined || b === undefined || (a.given === undefined && b.given === undefined)) continue;
    const high = varies(a) ? a.high : a.value;
    const low = varies(b) ? b.low : b.value;
    if (relation === '<' ? high < low : high <= low) continue;
    yield {
      id: a.given === undefined ? b.id : a.id,
      got: `${high} and ${low}`,
      problem: `${less} of ${group} ${subject} reaches ${more}`,
      expected: `${less} ${relation} ${more}, wherever in their ranges they are drawn`,
    };
  }
}

/**
 * What is wrong with the subjects that the user touched: numbers that a new one lacks, and numbers that do not go
 * together (temperatures out of order ...).
 * @param rows the rows in use
 * @param faulty ids of rows that were given but are faulty: they are not said to be lacking
 */
export function* subjectFaults(
  rows: ReadonlyMap<string, RangedRow>,
  faulty: ReadonlySet<string> | ReadonlyMap<string, unknown> = new Set<string>(),
): Generator<SubjectFault> {
  const seen = new Set<string>();
  for (const row of rows.values()) {
    if (row.given === undefined) continue;
    const [group, subject] = row.id.split('.');
    if (!isOpenGroup(group) || row.table === 'parameters') continue;
    if (row.table === 'constants' || seen.has(`${group}.${subject}`)) continue;
    seen.add(`${group}.${subject}`);
    if (!tableRows.has(row.id)) yield* missing(rows, group, subject, row, faulty);
    yield* disordered(rows, group, subject);
  }
}
