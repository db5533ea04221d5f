import { csvTable, type LogTable } from '@leat/core';
import { FileError, textOf } from './read.js';
import { openSheet } from './spreadsheet.js';

/**
 * Opens a log kept as CSV or as a spreadsheet (.xlsx). Throws FileError or InputError.
 * @param sheet of a spreadsheet; absent: its first
 */
export async function openLog(file: string, sheet?: string): Promise<LogTable> {
  if (file.toLowerCase().endsWith('.xlsx')) return openSheet(file, sheet);
  if (sheet !== undefined) throw new FileError(`${file}: it has no sheets, of which "${sheet}" could be one`);
  return csvTable(textOf(file), file);
}
