import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../../notebooks/', import.meta.url));

/** Files of the lessons and of the pages around them, in order. */
export const lessonFiles: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.html'))
  .sort();

/** A cell of a notebook. */
export interface Cell {
  readonly id: string;
  readonly type: string;
  readonly text: string;
}

/** The cells of one lesson in the order of the file. */
export function cellsOf(file: string): readonly Cell[] {
  const text = readFileSync(`${folder}${file}`, 'utf8');
  return [...text.matchAll(/<script id="(\d+)" type="([^"]+)"[^>]*>\n([\s\S]*?)\n {2}<\/script>/g)].map(
    ([, id, type, body]) => ({ id, type, text: body.replace(/^ {4}/gm, '') }),
  );
}
