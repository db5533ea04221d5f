import { type LogTable, sheetParts, sheetTable } from '@leat/core';
import { inflateRawSync } from 'node:zlib';
import { FileError, readBytes, reasonOf } from './read.js';

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
 * Unpacks each part of a spreadsheet (a zip archive of XML) once, so that one that would fill the memory is refused before
 * it is read. Throws FileError.
 * @param most bytes of all parts unpacked
 * @returns the parts that are looked into, by name
 */
function partsOf(bytes: Buffer, most: number): ReadonlyMap<string, string> {
  const tooLarge = new FileError(`more than ${most / 2 ** 20} MB when unpacked`);
  const parts = new Map<string, string>();
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
      const plain = stored ? data : inflateRawSync(data, { maxOutputLength: left + 1 });
      left -= plain.length;
      if (left < 0) throw tooLarge;
      const named = bytes.readUInt16LE(at + 28);
      const name = bytes.toString('utf8', at + 46, at + 46 + named);
      if (sheetParts.test(name)) parts.set(name, plain.toString('utf8'));
      at += 46 + named + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
    }
    return parts;
  } catch (error) {
    if (error instanceof FileError) throw error;
    if (error instanceof Error && 'code' in error && error.code === 'ERR_BUFFER_TOO_LARGE') throw tooLarge;
    throw new FileError('it is damaged or cut short');
  }
}

/** Largest spreadsheet as a file and unpacked, bytes. */
const most = { packed: 8 * 2 ** 20, unpacked: 128 * 2 ** 20 };

/** A sheet of a spreadsheet as a log, its first where none is wanted (see `sheetTable`). Throws FileError where the file is none. */
export async function openSheet(file: string, wanted?: string): Promise<LogTable> {
  const { readSheet } = await import('read-excel-file/node');
  try {
    const bytes = readBytes(file, most.packed);
    return await sheetTable(file, partsOf(bytes, most.unpacked), (sheet) => readSheet(bytes, sheet), wanted);
  } catch (error) {
    if (error instanceof Error && error.name === 'InputError') throw error;
    // What the reader of cells says of a sheet that is none is of its own insides.
    const reason = error instanceof TypeError ? 'its sheet is no sheet of cells' : reasonOf(error);
    throw new FileError(`${file}: cannot be read as a spreadsheet: ${reason}`);
  }
}
