import { csvTable, type LogTable } from '@leat/core';
import { textOf } from './read.js';
import { openSheet } from './spreadsheet.js';

/** Opens a log kept as CSV or as a spreadsheet (.xlsx). Throws FileError or InputError. */
export async function openLog(file: string): Promise<LogTable> {
  return file.toLowerCase().endsWith('.xlsx') ? openSheet(file) : csvTable(textOf(file), file);
}
