import { csvTable, logTable, type LogTable } from '@leat/core';
import { FileError, reasonOf } from './file-error.js';
import { readBytes } from './read-bytes.js';
import { boundSpreadsheet } from './spreadsheet-size.js';
import { textOf } from './text-of.js';

/** A cell of a spreadsheet as text: dates in ISO form, the time of day only where there is one. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date) return cell.toISOString().replace(/T00:00:00\.000Z$/, '');
  return typeof cell === 'string' || typeof cell === 'number' || typeof cell === 'boolean'
    ? String(cell).trim()
    : JSON.stringify(cell);
}

/** Largest spreadsheet as a file and unpacked, bytes. */
const most = { packed: 8 * 2 ** 20, unpacked: 128 * 2 ** 20 };

/** The first sheet of a spreadsheet. Throws FileError where it is none. */
async function sheetOf(file: string): Promise<LogTable> {
  const { readSheet } = await import('read-excel-file/node');
  let rows: readonly (readonly unknown[])[];
  try {
    const bytes = readBytes(file, most.packed);
    boundSpreadsheet(bytes, most.unpacked);
    rows = await readSheet(bytes);
  } catch (error) {
    throw new FileError(`${file}: cannot be read as a spreadsheet: ${reasonOf(error)}`);
  }
  return logTable(
    rows.map((cells) => cells.map(cellText)),
    file,
  );
}

/** Opens a log kept as CSV or as a spreadsheet (.xlsx). Throws FileError or InputError. */
export async function openLog(file: string): Promise<LogTable> {
  return file.toLowerCase().endsWith('.xlsx') ? sheetOf(file) : csvTable(textOf(file), file);
}
