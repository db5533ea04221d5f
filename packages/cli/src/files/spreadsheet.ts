import { type LogTable, logTable, type Oddity } from '@leat/core';
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

/** Parts of a spreadsheet that are looked into: what sheets there are, and their cells as they stand. */
const wanted = /^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/;

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
      if (wanted.test(name)) parts.set(name, plain.toString('utf8'));
      at += 46 + named + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
    }
    return parts;
  } catch (error) {
    if (error instanceof FileError) throw error;
    if (error instanceof Error && 'code' in error && error.code === 'ERR_BUFFER_TOO_LARGE') throw tooLarge;
    throw new FileError('it is damaged or cut short');
  }
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** Text of XML with its entities read. */
const plainXml = (text: string): string =>
  text.replace(/&(?:#(\d+)|#x([\da-f]+)|(\w+));/gi, (whole, ten, sixteen, name) => {
    if (ten !== undefined) return String.fromCodePoint(Number(ten));
    if (sixteen !== undefined) return String.fromCodePoint(Number.parseInt(String(sixteen), 16));
    return entities[String(name)] ?? whole;
  });

const attribute = (tag: string, name: string): string | undefined => {
  const [, text] = new RegExp(`\\s(?:\\w+:)?${name}="([^"]*)"`).exec(tag) ?? [];
  return text === undefined ? undefined : plainXml(text);
};

/** Day 0 of dates in a workbook that counts from 1904, and how much later it is than in others, d. */
const of1904 = { start: '1904-01-01', later: 1462 };

/** The names of all sheets, the XML of the first, and how the workbook says that its dates count from 1904. */
function sheetsOf(parts: ReadonlyMap<string, string>): {
  readonly names: readonly string[];
  readonly first: string;
  readonly date1904: string;
} {
  const tags = (part: string, tag: string): readonly string[] =>
    [...(parts.get(part) ?? '').matchAll(new RegExp(`<(?:\\w+:)?${tag}\\s[^>]*>`, 'g'))].map(
      ([each]) => each,
    );
  const sheets = tags('xl/workbook.xml', 'sheet');
  const names = sheets.map((tag) => attribute(tag, 'name') ?? '');
  const id = attribute(sheets[0] ?? '', 'id');
  const relation = tags('xl/_rels/workbook.xml.rels', 'Relationship').find(
    (tag) => attribute(tag, 'Id') === id,
  );
  const target = attribute(relation ?? '', 'Target') ?? '';
  const first = parts.get(target.startsWith('/') ? target.slice(1) : `xl/${target}`);
  if (first === undefined) throw new FileError('its first sheet is not where it should be');
  const dates = tags('xl/workbook.xml', 'workbookPr').map((tag) => attribute(tag, 'date1904') ?? '');
  return { names, first, date1904: dates.find((each) => each !== '') ?? '' };
}

/** Place of a cell by its name, `B3` being row 2 and column 1. */
function placeOf(name: string): readonly [row: number, column: number] | undefined {
  const [, letters, digits] = /^([A-Z]{1,3})(\d+)$/.exec(name) ?? [];
  if (letters === undefined || digits === undefined) return undefined;
  const column = Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return [Number(digits) - 1, column - 1];
}

/** A cell that has no value to read: where it stands, and what stands there for a person. */
interface BlindCell {
  readonly name: string;
  readonly text: string;
  /** Whether it is a formula of a text, without which no cell of the sheet can be read. */
  readonly fatal?: true;
}

/** Cells of a sheet that hold an error, or a formula without the value that it had when the file was saved. */
function blindCells(xml: string): readonly BlindCell[] {
  return [...xml.matchAll(/<(?:\w+:)?c\s([^>]*[^/>])>(.*?)<\/(?:\w+:)?c>/gs)].flatMap(
    ([, head = '', body = '']): BlindCell[] => {
      const name = attribute(` ${head}`, 'r') ?? '';
      const type = attribute(` ${head}`, 't');
      const [, value = ''] = /<(?:\w+:)?v(?:\s[^>]*)?>(.*?)<\/(?:\w+:)?v>/s.exec(body) ?? [];
      if (type === 'e') return [{ name, text: plainXml(value) || '#N/A' }];
      const formula = /<(?:\w+:)?f(?:\s[^>]*)?(?:\/>|>(.*?)<\/(?:\w+:)?f>)/s.exec(body);
      const hasValue = value !== '' || (type === 'str' && /<(?:\w+:)?v[\s>/]/.test(body));
      if (formula === null || hasValue) return [];
      return [{ name, text: `=${plainXml(formula[1] ?? '')}`, ...(type === 'str' && { fatal: true }) }];
    },
  );
}

/** A cell of a spreadsheet as text: dates in ISO form, so many days later, the time of day only where there is one. */
function cellText(cell: unknown, later: number): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date)
    return new Date(cell.getTime() + later * 86_400_000).toISOString().replace(/T00:00:00\.000Z$/, '');
  return typeof cell === 'string' || typeof cell === 'number' || typeof cell === 'boolean'
    ? String(cell).trim()
    : JSON.stringify(cell);
}

/** Largest spreadsheet as a file and unpacked, bytes. */
const most = { packed: 8 * 2 ** 20, unpacked: 128 * 2 ** 20 };

/** Puts what stands in cells without a value into the rows, so that it is told when they are read. */
function withBlind(rows: string[][], blind: readonly BlindCell[]): void {
  for (const { name, text } of blind) {
    const place = placeOf(name);
    if (place === undefined) throw new FileError(`a cell of the name "${name}"`);
    const [row, column] = place;
    while (rows.length <= row) rows.push([]);
    const cells = rows[row];
    while (cells.length <= column) cells.push('');
    cells[column] = text;
  }
}

/**
 * The first sheet of a spreadsheet; that there are others is odd, and what has no value stands as its formula or its error.
 * Throws FileError where the file is none.
 */
export async function openSheet(file: string): Promise<LogTable> {
  const { readSheet } = await import('read-excel-file/node');
  try {
    const bytes = readBytes(file, most.packed);
    const { names, first, date1904 } = sheetsOf(partsOf(bytes, most.unpacked));
    const blind = blindCells(first);
    const fatal = blind.find((cell) => cell.fatal);
    if (fatal !== undefined)
      throw new FileError(
        `cell ${fatal.name} holds a formula whose value the file does not hold: open it in a spreadsheet program and save it`,
      );
    const sheet: readonly (readonly unknown[])[] = await readSheet(bytes);
    // The reader of cells knows `1`, and not `true`, which says the same.
    const later = date1904 === 'true' ? of1904.later : 0;
    const rows = sheet.map((cells) => cells.map((cell) => cellText(cell, later)));
    withBlind(rows, blind);
    const others = names.slice(1);
    const oddity: Oddity = {
      row: 1,
      column: '',
      text: others.join(', '),
      problem: `${others.length} more ${others.length === 1 ? 'sheet' : 'sheets'}`,
      done: `only the first, "${names[0]}", is read`,
    };
    return logTable(rows, file, {
      ...(['1', 'true'].includes(date1904) && { serialStart: of1904.start }),
      ...(others.length > 0 && { oddities: [oddity] }),
    });
  } catch (error) {
    if (error instanceof Error && error.name === 'InputError') throw error;
    // What the reader of cells says of a sheet that is none is of its own insides.
    const reason = error instanceof TypeError ? 'its first sheet is no sheet of cells' : reasonOf(error);
    throw new FileError(`${file}: cannot be read as a spreadsheet: ${reason}`);
  }
}
