import { nearest } from '../base/nearest.js';
import { logTable, type LogTable } from './log-table.js';
import type { Oddity } from './water-log.js';

/** Parts of a spreadsheet that are looked into: what sheets there are, and their cells as they stand. */
export const sheetParts = /* @__PURE__ */ Object.freeze(
  /^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/,
);

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

/** The names of all sheets, the XML of the one that is read, and how the workbook says that its dates count from 1904. */
function sheetsOf(
  parts: ReadonlyMap<string, string>,
  wanted: string | undefined,
): {
  readonly names: readonly string[];
  readonly read: string;
  readonly xml: string;
  readonly date1904: string;
} {
  const tags = (part: string, tag: string): readonly string[] =>
    [...(parts.get(part) ?? '').matchAll(new RegExp(`<(?:\\w+:)?${tag}\\s[^>]*>`, 'g'))].map(
      ([each]) => each,
    );
  const sheets = tags('xl/workbook.xml', 'sheet');
  const names = sheets.map((tag) => attribute(tag, 'name') ?? '');
  const place = wanted === undefined ? 0 : names.indexOf(wanted);
  if (place < 0) {
    const near = nearest(wanted ?? '', names);
    const meant = near === undefined ? '' : `; did you mean "${near}"?`;
    throw new Error(`it has no sheet "${wanted}"; its sheets are ${names.join(', ')}${meant}`);
  }
  const id = attribute(sheets[place] ?? '', 'id');
  const relation = tags('xl/_rels/workbook.xml.rels', 'Relationship').find(
    (tag) => attribute(tag, 'Id') === id,
  );
  const target = attribute(relation ?? '', 'Target') ?? '';
  const xml = parts.get(target.startsWith('/') ? target.slice(1) : `xl/${target}`);
  if (xml === undefined) throw new Error(`its sheet "${names[place] ?? ''}" is not where it should be`);
  const dates = tags('xl/workbook.xml', 'workbookPr').map((tag) => attribute(tag, 'date1904') ?? '');
  return { names, read: names[place] ?? '', xml, date1904: dates.find((each) => each !== '') ?? '' };
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

/** Puts what stands in cells without a value into the rows, so that it is told when they are read. */
function withBlind(rows: string[][], blind: readonly BlindCell[]): void {
  for (const { name, text } of blind) {
    const place = placeOf(name);
    if (place === undefined) throw new Error(`a cell of the name "${name}"`);
    const [row, column] = place;
    while (rows.length <= row) rows.push([]);
    const cells = rows[row];
    while (cells.length <= column) cells.push('');
    cells[column] = text;
  }
}

/**
 * A sheet of a spreadsheet as a log, its first where none is wanted; that there are others is odd, and what has no value
 * stands as its formula or its error. Throws Error with the reason where the spreadsheet holds no sheet, or a text of a formula without its value.
 * @param parts the parts of its archive whose names `sheetParts` takes, as text
 * @param readCells reads the cells of a sheet by its name
 * @param wanted name of the sheet to read; absent: the first
 */
export async function sheetTable(
  file: string,
  parts: ReadonlyMap<string, string>,
  readCells: (sheet: string) => Promise<readonly (readonly unknown[])[]>,
  wanted?: string,
): Promise<LogTable> {
  const { names, read, xml, date1904 } = sheetsOf(parts, wanted);
  const blind = blindCells(xml);
  const fatal = blind.find((cell) => cell.fatal);
  if (fatal !== undefined)
    throw new Error(
      `cell ${fatal.name} holds a formula whose value the file does not hold: open it in a spreadsheet program and save it`,
    );
  const sheet = await readCells(read);
  // The reader of cells knows `1`, and not `true`, which says the same.
  const later = date1904 === 'true' ? of1904.later : 0;
  const rows = sheet.map((cells) => cells.map((cell) => cellText(cell, later)));
  withBlind(rows, blind);
  const others = names.filter((name) => name !== read);
  const oddity: Oddity = {
    row: 1,
    column: '',
    text: others.join(', '),
    problem: `${others.length} more ${others.length === 1 ? 'sheet' : 'sheets'}`,
    done: `only the first, "${read}", is read; another stands under sheet in the map, or in --sheet`,
  };
  return logTable(rows, file, {
    ...(['1', 'true'].includes(date1904) && { serialStart: of1904.start }),
    ...(others.length > 0 && wanted === undefined && { oddities: [oddity] }),
  });
}
