import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Folder of the scenarios that come with the command. */
const folder = fileURLToPath(new URL('../../scenarios/', import.meta.url));
const ending = '.yaml';

/** Names of the scenarios that come with the command, in the order of the alphabet. */
export function shippedNames(): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length))
    .sort();
}

/** Path of a shipped scenario by its name. */
export function shippedPath(name: string): string {
  return `${folder}${name}${ending}`;
}

/** Name of the JSON Schema of a system file, beside the files that name it. */
export const schemaName = 'leat.schema.json';

/** The line by which editors find the schema beside a file: without a network, and wherever the folder is carried. */
export const schemaReference = `./${schemaName}`;

/** Path of the JSON Schema of a system file that comes with the command. */
export const schemaPath = fileURLToPath(new URL(`../../schema/${schemaName}`, import.meta.url));

/** Files that come beside a shipped scenario: a log, and the map of its columns. */
export function shippedBeside(name: string): readonly string[] {
  return ['.csv', '.map'].map((end) => `${folder}${name}${end}`).filter((path) => existsSync(path));
}
