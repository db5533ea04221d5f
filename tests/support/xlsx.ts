import { crc32 } from 'node:zlib';

/** A zip archive of parts as they are, none of them packed. */
function zip(parts: Readonly<Record<string, string>>): Uint8Array {
  const bodies: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, text] of Object.entries(parts)) {
    const data = Buffer.from(text);
    const named = Buffer.from(name);
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt32LE(crc32(data), 10);
    common.writeUInt32LE(data.length, 14);
    common.writeUInt32LE(data.length, 18);
    common.writeUInt16LE(named.length, 22);
    const entry = Buffer.alloc(20);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt16LE(20, 4);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(at, 10);
    directory.push(entry.subarray(0, 6), common, tail, named);
    const local = Buffer.concat([Buffer.from('PK\u0003\u0004'), common, named, data]);
    bodies.push(local);
    at += local.length;
  }
  const list = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(Object.keys(parts).length, 8);
  end.writeUInt16LE(Object.keys(parts).length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...bodies, list, end]);
}

const space = 'http://schemas.openxmlformats.org';
const main = `xmlns="${space}/spreadsheetml/2006/main"`;
const relations = `${space}/officeDocument/2006/relationships`;
const listed = (type: string, i: number, target: string): string =>
  `<Relationship Id="rId${i}" Type="${relations}/${type}" Target="${target}"/>`;

/** A text as a cell, and anything else as it stands (`<c r="B2" t="e"><v>#N/A</v></c>`). */
const cellOf = (text: string, row: number, column: number): string =>
  text.startsWith('<')
    ? text
    : `<c r="${String.fromCharCode(65 + column)}${row + 1}" t="inlineStr"><is><t>${text}</t></is></c>`;

/**
 * A spreadsheet with sheets of these rows, by name: for cells that no writer of spreadsheets writes.
 * @param head what stands in the workbook before its sheets; `more`: parts beside or in place of the usual
 */
export function xlsx(
  sheets: Readonly<Record<string, readonly (readonly string[])[]>>,
  { head = '', more = {} }: { readonly head?: string; readonly more?: Readonly<Record<string, string>> } = {},
): Uint8Array {
  const names = Object.keys(sheets);
  const parts: Record<string, string> = {
    '[Content_Types].xml': `<Types xmlns="${space}/package/2006/content-types"/>`,
    '_rels/.rels': `<Relationships xmlns="${space}/package/2006/relationships">${listed('officeDocument', 1, 'xl/workbook.xml')}</Relationships>`,
    'xl/workbook.xml': `<workbook ${main} xmlns:r="${relations}">${head}<sheets>${names
      .map((name, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${space}/package/2006/relationships">${names
      .map((_, i) => listed('worksheet', i + 1, `worksheets/sheet${i + 1}.xml`))
      .join('')}</Relationships>`,
  };
  Object.values(sheets).forEach((rows, i) => {
    const data = rows
      .map(
        (cells, row) => `<row r="${row + 1}">${cells.map((text, j) => cellOf(text, row, j)).join('')}</row>`,
      )
      .join('');
    parts[`xl/worksheets/sheet${i + 1}.xml`] =
      `<worksheet ${main}><sheetData>${data}</sheetData></worksheet>`;
  });
  return zip({ ...parts, ...more });
}
