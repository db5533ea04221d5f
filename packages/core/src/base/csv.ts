import { dsvFormat } from 'd3-dsv';

/** The most that is read of a separated text: `characters` in all, `rows` with that of the names, and `columns`. */
export interface CsvLimits {
  readonly characters: number;
  readonly rows: number;
  readonly columns: number;
}

/** Why a text or a table is not read; `count` is how many characters, rows or columns it has. */
export type CsvFlaw =
  | { readonly kind: 'not-text' | 'empty' }
  | { readonly kind: 'too-long' | 'too-many-rows' | 'too-many-columns'; readonly count: number };

/** The separator that stands most often in the first line of a text: comma, semicolon or tab. */
function separatorOf(text: string): string {
  const [first = ''] = text.split(/\r?\n/, 1);
  const counts = [',', ';', '\t'].map((mark) => ({ mark, count: first.split(mark).length }));
  return counts.reduce((best, each) => (each.count > best.count ? each : best)).mark;
}

/** What is wrong with the size of a table of cells; undefined where nothing is. */
export function tableFlaw(rows: readonly (readonly string[])[], most: CsvLimits): CsvFlaw | undefined {
  if (!rows.some((cells) => cells.some((cell) => cell !== ''))) return { kind: 'empty' };
  if (rows.length > most.rows) return { kind: 'too-many-rows', count: rows.length };
  const widest = rows.reduce((width, cells) => Math.max(width, cells.length), 0);
  return widest > most.columns ? { kind: 'too-many-columns', count: widest } : undefined;
}

/**
 * Cuts separated text (comma, semicolon or tab, found by the first line) into rows of cells, as a spreadsheet saves and
 * numbers them: blank rows count, save those at the end; spaces around a cell do not.
 * @returns the rows, or why they are not read
 */
export function readCsv(
  text: string,
  most: CsvLimits,
): { readonly rows: readonly (readonly string[])[] } | CsvFlaw {
  if (text.includes('\0')) return { kind: 'not-text' };
  if (text.length > most.characters) return { kind: 'too-long', count: text.length };
  const plain = text.replace(/^\uFEFF/, '').trimEnd();
  const rows = dsvFormat(separatorOf(plain)).parseRows(plain, (cells) => cells.map((cell) => cell.trim()));
  return tableFlaw(rows, most) ?? { rows };
}
