import { dsvFormat } from 'd3-dsv';
import { separatorOf } from '../log/separator-of.js';
import { nearest } from '../suggest.js';
import { convert, type Dimension } from '../units.js';
import type { Complaint } from './schema/complaint.js';

/** Longest text of one file, characters; most rows, a century of days and some; most columns. */
const most = { characters: 4_000_000, rows: 40_000, columns: 200 };

/** What is wrong with a text as a whole; undefined where it may be read. */
function unfitCsv(text: string): Complaint | undefined {
  if (text.trim() === '') return { problem: 'an empty file', expected: 'a row of names, then one row a day' };
  if (text.includes('\0')) return { problem: 'not text', expected: 'a CSV file' };
  if (text.length <= most.characters) return undefined;
  return { problem: `a file of ${text.length} characters`, expected: `at most ${most.characters}` };
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
  const unfit = unfitCsv(text);
  if (unfit !== undefined) return { complaint: unfit, about: 'csv' };
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  while (lines.length > 0 && lines[lines.length - 1]?.trim() === '') lines.pop();
  if (lines.length > most.rows + 1)
    return {
      complaint: { problem: `${lines.length - 1} rows in the file`, expected: `at most ${most.rows}` },
      about: 'csv',
    };
  const separated = dsvFormat(separatorOf(lines[0] ?? ''));
  const fieldsOf = (line: string): string[] =>
    (separated.parseRows(line)[0] ?? []).map((field) => field.trim());
  const header = fieldsOf(lines[0] ?? '');
  if (header.length > most.columns)
    return {
      complaint: { problem: `${header.length} columns in the file`, expected: `at most ${most.columns}` },
      about: 'csv',
    };
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
  for (const [index, line] of lines.slice(1).entries()) {
    const field = fieldsOf(line)[place] ?? '';
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
