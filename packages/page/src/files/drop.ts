import { csvTable, type LogTable } from '@leat/core';
import { openSheet } from './spreadsheet.js';

/** What came with a file that was dropped or chosen. */
export type Came =
  | { readonly kind: 'text'; readonly name: string; readonly text: string }
  | { readonly kind: 'log'; readonly name: string; readonly table: LogTable; readonly text?: string };

/** Largest file that is taken, bytes. */
const most = 16 * 2 ** 20;

/** Whether a table of text is a log of tests: one of its first columns is a date. A table of numbers or weather may be too: it stays a text as well. */
const looksLikeLog = ({ rows }: LogTable): boolean => {
  const [head = []] = rows;
  return (
    head.some((cell) => /date|day|fecha|d[ií]a/i.test(cell)) && !head.some((cell) => /^(id|key)$/i.test(cell))
  );
};

/** Reads a file. Throws where it cannot be read. */
export async function readDropped(file: File): Promise<Came> {
  const { name, size } = file;
  if (size > most) throw new Error(`${name}: larger than 16 MB`);
  const lower = name.toLowerCase();
  if (lower.endsWith('.xlsx'))
    return { kind: 'log', name, table: await openSheet(name, new Uint8Array(await file.arrayBuffer())) };
  const text = await file.text();
  if (lower.endsWith('.csv') || lower.endsWith('.tsv')) {
    try {
      const table = csvTable(text, name);
      if (looksLikeLog(table)) return { kind: 'log', name, table, text };
    } catch {
      // No log: a table that the system names is read with the system.
    }
  }
  return { kind: 'text', name, text };
}

/** Whether a text is a system file by its name. */
export const isSystem = (name: string): boolean => /\.ya?ml$/i.test(name);
