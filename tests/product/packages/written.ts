import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Writes a text to a file and tells its address. */
export function written(folder: string, name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return pathToFileURL(path).href;
}
