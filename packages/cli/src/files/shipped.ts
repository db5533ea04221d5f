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

/** The question a shipped scenario opens with: its first comment, up to the question mark. */
export function questionOf(text: string): string {
  const lines = text.split('\n');
  const end = lines.findIndex((line) => !line.startsWith('#'));
  const comment = lines
    .slice(0, end < 0 ? lines.length : end)
    .map((line) => line.slice(1).trim())
    .join(' ');
  const mark = comment.indexOf('?');
  return mark < 0 ? comment : comment.slice(0, mark + 1);
}

/** Files that come beside a shipped scenario: a log, and the map of its columns. */
export function shippedBeside(name: string): readonly string[] {
  return ['.csv', '.map'].map((end) => `${folder}${name}${end}`).filter((path) => existsSync(path));
}
