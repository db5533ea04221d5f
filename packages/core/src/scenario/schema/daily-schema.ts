import * as z from 'zod';
import { convert, describeDimension, parseQuantity, type Dimension } from '../../units.js';
import type { DailyValue } from '../scenario.js';
import { complain, kindComplaint } from './complaint.js';
import { quantity, quantityComplaint, type Reads, section, word } from './values.js';

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

/** Months in a year. */
const months = 12;

/**
 * A value for each day of the run: a quantity, `{monthly: [12 values]}`, `{daily: [...]}`, or
 * `{csv: file, column: name, unit: unit}`. With `unit` the values of a list may be plain numbers.
 */
export function daily(dimension: Dimension, description: string): Reads<DailyGiven> {
  const expected = `${describeDimension(dimension)}, or a map of monthly, daily or csv`;
  const shape = section(
    {
      monthly: listed.meta({ description: 'twelve values, January first' }).optional(),
      daily: listed.meta({ description: 'one value for each day of the run' }).optional(),
      csv: word('a file with one row for each day of the run, under a row of column names').optional(),
      column: word('name of the column').optional(),
      unit: word('unit of the plain numbers in the list or the column').optional(),
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
    if (key === 'monthly' && written.length !== months)
      return complainAt([key], 'not twelve values', { expected: 'January to December' });
    if (written.length === 0)
      return complainAt([key], 'an empty list', { expected: 'one value for each day of the run' });
    const values = written.map((value, index) => {
      if (typeof value === 'number' && unit === undefined) {
        return complainAt([key, index], 'a number without a unit', {
          expected: `${describeDimension(dimension)}, or \`unit\` beside the list`,
        });
      }
      const answer =
        typeof value === 'number' ? convert(value, unit ?? '', dimension) : parseQuantity(value, dimension);
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
