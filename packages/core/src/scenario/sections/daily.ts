import * as z from 'zod';
import { type CsvFlaw, readCsv } from '../../base/csv.js';
import { nearest } from '../../base/nearest.js';
import {
  convert,
  describeDimension,
  type Dimension,
  formatQuantity,
  internalUnit,
  inUnit,
  parseQuantity,
} from '../../base/units.js';
import { complain, type Complaint, kindComplaint } from '../file/complaint.js';
import { loadText, resolvePath } from '../file/include-tree.js';
import type { Reader } from '../file/reader.js';
import { originAt, type Path } from '../file/tree.js';
import { quantity, quantityComplaint, type Reads, section, word } from '../file/values.js';
import { checkDaily, type DailyNeed, listProblem } from '../checks/daily.js';
import type { DailyValue } from '../scenario.js';

/** A daily value as written: complete, or a column of a CSV file still to be read. */
export type DailyGiven =
  | DailyValue
  | { readonly kind: 'csv'; readonly file: string; readonly column: string; readonly unit: string };

const listed = z.array(
  z.union([z.string(), z.number()], {
    error: ({ input }) => kindComplaint(input, 'a quantity, or a number where `unit` is given'),
  }),
  { error: ({ input }) => kindComplaint(input, 'a list of values') },
);

/** Days of each month; February in the mean of years. */
const monthDays = [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Depth a month as weather services give it, `45 mm/month`, as depth a day and its unit; undefined where it is none. */
function aDay(
  value: string | number,
  unit: string | undefined,
  month: number,
): readonly [value: number, unit: string] | undefined {
  const written = typeof value === 'number' ? `${value} ${unit ?? ''}` : value;
  const match = /^\s*(\d+\.?\d*|\.\d+)\s*(mm|cm|in)\s*\/\s*month\s*$/.exec(written);
  return match === null ? undefined : [Number(match[1]) / monthDays[month], `${match[2]}/d`];
}

/**
 * A value for each day of the run: a quantity, `{monthly: [12 values]}`, `{daily: [...]}`, or
 * `{csv: file, column: name, unit: unit}`. With `unit` the values of a list may be plain numbers.
 */
export function daily(dimension: Dimension, description: string): Reads<DailyGiven> {
  const expected = `${describeDimension(dimension)}, or a map of monthly, daily or csv`;
  const shape = section(
    {
      monthly: listed.meta({ description: 'twelve values, January first; default: none' }).optional(),
      daily: listed.meta({ description: 'one value for each day of the run; default: none' }).optional(),
      csv: word(
        'a file with one row for each day of the run, under a row of column names; default: none',
      ).optional(),
      column: word('name of the column; default: none, csv needs it').optional(),
      unit: word(
        'unit of the plain numbers in the list or the column; default: none, each value then writes its own',
      ).optional(),
    },
    description,
  ).transform((given, context): DailyGiven => {
    const complainAt = (
      path: (string | number)[],
      problem: string,
      rest: { expected?: string } = {},
    ): never => {
      context.addIssue({ code: 'custom', path, message: complain({ problem, ...rest }) });
      return z.NEVER;
    };
    const { monthly, daily: days, csv, column, unit } = given;
    const forms = [monthly, days, csv].filter((form) => form !== undefined).length;
    if (forms !== 1)
      return complainAt([], 'not one way to give daily values', { expected: 'one of monthly, daily, csv' });
    if (csv !== undefined) {
      if (column === undefined)
        return complainAt(['column'], 'missing', { expected: 'the name of a column' });
      if (unit === undefined)
        return complainAt(['unit'], 'missing', { expected: `the unit of ${describeDimension(dimension)}` });
      const answer = convert(1, unit, dimension);
      if (!('value' in answer) && answer.problem !== 'negative')
        return complainAt(['unit'], answer.problem, answer);
      return { kind: 'csv', file: csv, column, unit };
    }
    if (column !== undefined) return complainAt(['column'], 'only for csv');
    const key = monthly === undefined ? 'daily' : 'monthly';
    const written = monthly ?? days ?? [];
    const short = listProblem(key, written.length);
    if (short !== undefined) return complainAt([key], short.problem, short);
    const values = written.map((text, index) => {
      const ofMonth = key === 'monthly' && dimension === 'depth-rate' ? aDay(text, unit, index) : undefined;
      const [value, itsUnit] = ofMonth ?? [text, unit];
      if (typeof value === 'number' && itsUnit === undefined) {
        return complainAt([key, index], 'a number without a unit', {
          expected: `${describeDimension(dimension)}, or \`unit\` beside the list`,
        });
      }
      const answer =
        typeof value === 'number'
          ? convert(value, itsUnit ?? '', dimension)
          : parseQuantity(value, dimension);
      return 'value' in answer ? answer.value : complainAt([key, index], answer.problem, answer);
    });
    return { kind: key, values };
  });
  const constant = quantity(dimension, description).transform((value): DailyGiven => ({
    kind: 'constant',
    value,
  }));
  return z.union([constant, shape], {
    error: ({ input }) => quantityComplaint(input, expected),
  });
}

/** Longest text of one file, characters; most rows, the names and a century of days and some; most columns. */
const most = { characters: 4_000_000, rows: 40_001, columns: 200 };

/** What is wrong with a file as a whole. */
function csvComplaint(flaw: CsvFlaw): Complaint {
  switch (flaw.kind) {
    case 'empty':
      return { problem: 'an empty file', expected: 'a row of names, then one row a day' };
    case 'not-text':
      return { problem: 'not text', expected: 'a CSV file' };
    case 'too-long':
      return { problem: `a file of ${flaw.count} characters`, expected: `at most ${most.characters}` };
    case 'too-many-rows':
      return { problem: `${flaw.count - 1} rows in the file`, expected: `at most ${most.rows - 1}` };
    case 'too-many-columns':
      return { problem: `${flaw.count} columns in the file`, expected: `at most ${most.columns}` };
  }
}

const commaHint = (field: string): string => (/^[+-]?\d+,\d+$/.test(field) ? ' (write a decimal point)' : '');

/**
 * One column of CSV text: a row of names, then one row a day. Values are numbers in `unit`, converted
 * to the internal unit. Never fills gaps: an empty field is `gap` where that is given, else, like one that
 * cannot be read, a complaint that names its line.
 */
export function readCsvColumn(
  text: string,
  column: string,
  unit: string,
  dimension: Dimension,
  gap?: number,
): { values: readonly number[] } | { complaint: Complaint; about: 'csv' | 'column' } {
  const read = readCsv(text, most);
  if ('kind' in read) return { complaint: csvComplaint(read), about: 'csv' };
  const [header, ...rows] = read.rows;
  const place = header.indexOf(column);
  if (place < 0) {
    const guess = nearest(column, header);
    const hint =
      guess === undefined
        ? { expected: `one of ${header.slice(0, 12).join(', ')}${header.length > 12 ? ' ...' : ''}` }
        : { nearest: guess };
    return { complaint: { problem: 'no such column', ...hint }, about: 'column' };
  }
  const values: number[] = [];
  for (const [index, cells] of rows.entries()) {
    const field = cells[place] ?? '';
    if (field === '' && gap !== undefined) {
      values.push(gap);
      continue;
    }
    const number = field === '' ? Number.NaN : Number(field);
    const answer = Number.isNaN(number)
      ? {
          problem:
            field === ''
              ? 'no value'
              : `not a number: ${JSON.stringify(field.slice(0, 60))}${commaHint(field)}`,
        }
      : convert(number, unit, dimension);
    if ('problem' in answer) {
      return {
        complaint: {
          problem: `line ${index + 2} of the file, column ${column}: ${answer.problem}${Number.isNaN(number) ? '' : `: ${field.slice(0, 60)}`}`,
        },
        about: 'csv',
      };
    }
    values.push(answer.value);
  }
  return { values };
}

function fromCsv(
  reader: Reader,
  path: Path,
  given: DailyGiven & { kind: 'csv' },
  dimension: Dimension,
): readonly number[] | undefined {
  const { file: from } = originAt(reader.tree, [...path, 'csv']);
  const answer = loadText(reader.load, resolvePath(from, given.file), from);
  if ('problem' in answer) {
    reader.fault([...path, 'csv'], answer.problem);
    return undefined;
  }
  const column = readCsvColumn(answer.text, given.column, given.unit, dimension);
  if ('values' in column) return column.values;
  const { problem, ...rest } = column.complaint;
  reader.fault([...path, column.about], problem, rest);
  return undefined;
}

/** Units that people have for what is counted in another one inside. */
const fieldUnits: Readonly<Partial<Record<Dimension, string>>> = {
  'depth-rate': 'mm/d',
  'mole-share': 'ppm',
};

/** A bound as people write it. */
function boundOf(value: number, dimension: Dimension): string {
  const unit = fieldUnits[dimension];
  const shown = unit === undefined ? undefined : inUnit(value, internalUnit(dimension), unit);
  return shown === undefined ? formatQuantity(value, dimension) : `${Number(shown.toPrecision(12))} ${unit}`;
}

/** Completes a daily value: reads its CSV, and checks that it reaches to the end and stays in bounds. */
export function readDaily(
  reader: Reader,
  path: Path,
  given: DailyGiven,
  need: DailyNeed,
): DailyValue | undefined {
  const { dimension } = need;
  const values =
    given.kind === 'constant'
      ? [given.value]
      : given.kind === 'csv'
        ? fromCsv(reader, path, given, dimension)
        : given.values;
  if (values === undefined) return undefined;
  const csv = given.kind === 'csv';
  const sound = checkDaily(reader, csv ? 'daily' : given.kind, values, need, {
    list: [...path, given.kind],
    value: (index) =>
      given.kind === 'constant' ? path : csv ? [...path, 'csv'] : [...path, given.kind, index],
    bound: (value) => boundOf(value, dimension),
    note: (index) => (csv ? ` on line ${index + 2} of the file` : ''),
  });
  if (!sound) return undefined;
  if (given.kind === 'constant' || given.kind === 'monthly') return given;
  if (given.kind === 'csv')
    reader.defaults.push({ path, value: { daily: [...values], unit: internalUnit(dimension) } });
  return { kind: 'daily', values };
}
