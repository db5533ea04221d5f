import { type CsvFlaw, readCsv, tableFlaw } from '../base/csv.js';
import { InputError } from '../base/faults.js';
import type { Oddity } from './water-log.js';

/** A table of text as it stood in a file, nothing read into it. */
export interface LogTable {
  /** Name of the file, for messages. */
  readonly file: string;
  /** Cells of every row, the first row first: row 1 of the file is `rows[0]`. */
  readonly rows: readonly (readonly string[])[];
  /** Day 0 of the serial numbers of its dates, ISO, where it is not that of most spreadsheets (1899-12-30). */
  readonly serialStart?: string;
  /** What is odd about the file as a whole, such as sheets that are not read. */
  readonly oddities?: readonly Oddity[];
}

/** Longest text read, characters; most rows and columns. */
const most = { characters: 20_000_000, rows: 100_000, columns: 200 };

function faultOf(flaw: CsvFlaw, file: string): InputError {
  const fault = (problem: string, expected: string, got?: number): InputError =>
    new InputError([{ file, problem, expected, ...(got === undefined ? {} : { got: String(got) }) }]);
  switch (flaw.kind) {
    case 'not-text':
      return fault('not text', 'a CSV file, or a spreadsheet with the ending .xlsx');
    case 'too-long':
      return fault('too long', `at most ${most.characters} characters`);
    case 'empty':
      return fault('empty', 'a row of names, then one row a day');
    case 'too-many-rows':
      return fault('too many rows', `at most ${most.rows}`, flaw.count);
    case 'too-many-columns':
      return fault('too many columns', `at most ${most.columns}`, flaw.count);
  }
}

/**
 * Parses separated text (comma, semicolon or tab, found by the first line), as a spreadsheet saves it. Rows are
 * numbered as a spreadsheet numbers them.
 * @throws InputError where the text is no table: binary, empty, or beyond all size
 */
export function csvTable(text: string, file: string): LogTable {
  const read = readCsv(text, most);
  if ('kind' in read) throw faultOf(read, file);
  return { file, rows: read.rows };
}

/**
 * A table of cells that were read elsewhere, such as from a spreadsheet.
 * @param more what the file says beside its cells
 * @throws InputError where it is empty or beyond all size
 */
export function logTable(
  rows: readonly (readonly string[])[],
  file: string,
  more: Omit<LogTable, 'file' | 'rows'> = {},
): LogTable {
  const flaw = tableFlaw(rows, most);
  if (flaw !== undefined) throw faultOf(flaw, file);
  return { ...more, file, rows };
}
