import { nearest } from '../suggest.js';
import { convert, type Dimension } from '../units.js';
import type { Complaint } from './schema/complaint.js';

/** Fields of a CSV line; a field may be quoted, and a quote inside is doubled. */
function fieldsOf(line: string): string[] {
  const fields = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)];
  return fields.map(([, quoted, plain = '']) =>
    quoted === undefined ? plain.trim() : quoted.replace(/""/g, '"'),
  );
}

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
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  while (lines.length > 0 && lines[lines.length - 1]?.trim() === '') lines.pop();
  const header = fieldsOf(lines[0] ?? '');
  const place = header.indexOf(column);
  if (place < 0) {
    const guess = nearest(column, header);
    const hint = guess === undefined ? { expected: `one of ${header.join(', ')}` } : { nearest: guess };
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
      ? { problem: `not a number: ${JSON.stringify(field)}` }
      : convert(number, unit, dimension);
    if ('problem' in answer) {
      return {
        complaint: { problem: `line ${index + 2} of the file, column ${column}: ${answer.problem}` },
        about: 'csv',
      };
    }
    values.push(answer.value);
  }
  return { values };
}
