import { csvTable, logTable, type LogTable } from '@leat/core';
import { inflateRawSync } from 'node:zlib';
import { FileError, readBytes, reasonOf, textOf } from './read.js';

const endMark = 0x06054b50;
const entryMark = 0x02014b50;

/** The directory of a zip archive stands at its end, behind it at most a comment of 64 kB. */
function directoryOf(bytes: Buffer): { readonly at: number; readonly entries: number } {
  for (let at = bytes.length - 22; at >= Math.max(0, bytes.length - 22 - 65_535); at -= 1) {
    if (bytes.readUInt32LE(at) === endMark)
      return { at: bytes.readUInt32LE(at + 16), entries: bytes.readUInt16LE(at + 10) };
  }
  throw new FileError('it is no spreadsheet of the form .xlsx');
}

/**
 * Unpacks each part of a spreadsheet (a zip archive of XML) once and throws it away, so that one that would fill the
 * memory is refused before it is read. Throws FileError.
 * @param most bytes of all parts unpacked
 */
function boundSpreadsheet(bytes: Buffer, most: number): void {
  const tooLarge = new FileError(`more than ${most / 2 ** 20} MB when unpacked`);
  let left = most;
  try {
    let { at, entries } = directoryOf(bytes);
    for (; entries > 0; entries -= 1) {
      if (bytes.readUInt32LE(at) !== entryMark) throw new FileError('its directory is damaged');
      const packed = bytes.readUInt32LE(at + 20);
      const start = bytes.readUInt32LE(at + 42);
      const body = start + 30 + bytes.readUInt16LE(start + 26) + bytes.readUInt16LE(start + 28);
      const data = bytes.subarray(body, body + packed);
      const stored = bytes.readUInt16LE(at + 10) === 0;
      left -= stored ? packed : inflateRawSync(data, { maxOutputLength: left + 1 }).length;
      if (left < 0) throw tooLarge;
      at += 46 + bytes.readUInt16LE(at + 28) + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
    }
  } catch (error) {
    if (error instanceof FileError) throw error;
    if (error instanceof Error && 'code' in error && error.code === 'ERR_BUFFER_TOO_LARGE') throw tooLarge;
    throw new FileError('it is damaged or cut short');
  }
}

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
