import { dsvFormat } from 'd3-dsv';
import { separatorOf } from '../base/csv.js';
import { InputError } from '../base/faults.js';

/** A table of text as it stood in a file, nothing read into it. */
export interface LogTable {
  /** Name of the file, for messages. */
  readonly file: string;
  /** Cells of every row, the first row first: row 1 of the file is `rows[0]`. */
  readonly rows: readonly (readonly string[])[];
}

/** Longest text read, characters; most rows and columns. */
const most = { characters: 20_000_000, rows: 100_000, columns: 200 };

/**
 * Parses separated text (comma, semicolon or tab, told by the first line), as a spreadsheet saves it. Rows are
 * numbered as a spreadsheet numbers them.
 * @throws InputError where the text is no table: binary, empty, or beyond all size
 */
export function csvTable(text: string, file: string): LogTable {
  const fault = (problem: string, expected: string): InputError =>
    new InputError([{ file, problem, expected }]);
  if (text.includes('\0')) throw fault('not text', 'a CSV file, or a spreadsheet with the ending .xlsx');
  if (text.length > most.characters) throw fault('too long', `at most ${most.characters} characters`);
  const plain = text.replace(/^\uFEFF/, '');
  const rows = dsvFormat(separatorOf(plain)).parseRows(plain, (cells) => cells.map((cell) => cell.trim()));
  return logTable(rows, file);
}

/**
 * A table of cells that were read elsewhere, such as from a spreadsheet.
 * @throws InputError where it is empty or beyond all size
 */
export function logTable(rows: readonly (readonly string[])[], file: string): LogTable {
  const fault = (problem: string, expected: string, got?: number): InputError =>
    new InputError([{ file, problem, expected, ...(got === undefined ? {} : { got: String(got) }) }]);
  if (!rows.some((cells) => cells.some((cell) => cell !== '')))
    throw fault('empty', 'a row of names, then one row a day');
  if (rows.length > most.rows) throw fault('too many rows', `at most ${most.rows}`, rows.length);
  const widest = rows.reduce((width, cells) => Math.max(width, cells.length), 0);
  if (widest > most.columns) throw fault('too many columns', `at most ${most.columns}`, widest);
  return { file, rows };
}
