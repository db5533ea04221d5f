import { strFromU8, unzipSync } from 'fflate';
import { type LogTable, sheetParts, sheetTable } from '@leat/core';
import { readSheet } from 'read-excel-file/universal';

/** Largest spreadsheet as a file and unpacked, bytes. */
const most = { packed: 8 * 2 ** 20, unpacked: 128 * 2 ** 20 };

function partsOf(bytes: Uint8Array): ReadonlyMap<string, string> {
  let left = most.unpacked;
  const parts = unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      left -= originalSize;
      if (left < 0) throw new Error(`more than ${most.unpacked / 2 ** 20} MB when unpacked`);
      return sheetParts.test(name);
    },
  });
  return new Map(Object.entries(parts).map(([name, part]) => [name, strFromU8(part)]));
}

/** The first sheet of a spreadsheet as a log (see `sheetTable`). Throws where the file is none. */
export async function openSheet(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<LogTable> {
  try {
    if (bytes.length > most.packed) throw new Error(`larger than ${most.packed / 2 ** 20} MB`);
    return await sheetTable(name, partsOf(bytes), (sheet) => readSheet(bytes.buffer, sheet));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new Error(`${name}: cannot be read as a spreadsheet: ${reason}`, { cause: error });
  }
}
